package sheaf.core.record;

import java.util.Optional;

/**
 * What the technician altered before a sheet was shot.
 *
 * @param beforeSheet the number of that sheet
 * @param what was altered: {@code rest}
 * @param way it went, such as {@code left}; empty when it was not said
 * @param amount how much, with its unit; empty when it was not said
 */
public record Change(int beforeSheet, Taken what, Optional<Taken> way, Optional<Taken> amount) {

  /** One line of the story: {@code Before sheet 3: rest, moved left, by 1/32 in}. */
  public String words() {
    return "Before sheet "
        + beforeSheet
        + ": "
        + value(what)
        + way.map(to -> ", moved " + value(to)).orElse("")
        + amount.map(Change::by).orElse("")
        + (what.how() == How.READ ? "" : " (" + what.how().spoken() + ")");
  }

  private static String value(Taken taken) {
    return taken.words().orElse("on paper");
  }

  private static String by(Taken amount) {
    return amount.words().isPresent()
        ? ", by " + value(amount)
        : ", how much is written on the sheet and not read yet";
  }
}
