package sheaf.desk.report;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import sheaf.core.answer.Revision;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;

/** How the values of a job came to be: each with what it was, when and by whom. */
public final class HistoryText {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private HistoryText() {}

  /**
   * A heading for each field and a line for each value that it had, the earliest first.
   *
   * @param zone that times are told in
   * @param width of a line, in characters
   */
  public static String of(List<List<Revision>> history, ZoneId zone, int width) {
    StringBuilder text = new StringBuilder();
    for (List<Revision> field : history) {
      text.append(field.get(0).label()).append(" (").append(field.get(0).field().key()).append(")");
      text.append("\n");
      field.forEach(one -> text.append(line(one, zone, width)));
    }
    return text.toString();
  }

  private static String line(Revision one, ZoneId zone, int width) {
    return Text.hanging("  " + TIME.format(one.when().atZone(zone)) + "  ", told(one), width);
  }

  /** A value and where it came from, in a line. */
  public static String told(Revision one) {
    FieldReading field = one.field();
    String value =
        field.state() == State.BLANK
            ? "nothing written"
            : field.text().isEmpty() ? "something not clear" : field.words();
    return value + ", " + from(one);
  }

  private static String from(Revision one) {
    return switch (one.field().teller()) {
      case MACHINE -> "read from " + one.source().orElse("a scan") + sheet(one) + sure(one.field());
      case LOOKED -> "looked at" + by(one);
      case TYPED -> "typed in" + by(one);
    };
  }

  private static String sheet(Revision one) {
    return (one.sheet().isPresent() ? ", sheet " + one.sheet().getAsInt() : "")
        + one.place()
            .map(at -> " at " + Math.round(at.x()) + ", " + Math.round(at.y()) + " mm")
            .orElse("");
  }

  private static String sure(FieldReading field) {
    if (field.text().isEmpty()) {
      return "";
    }
    // A non-breaking blank keeps the number and its sign on one line.
    String share = String.format(Locale.ROOT, "%.1f\u00a0%% sure", 100 * field.confidence());
    return ", " + share + (field.state() == State.CHECK ? ", which is not enough" : "");
  }

  private static String by(Revision one) {
    return one.who().map(who -> " by " + who).orElse("")
        + one.why().map(why -> ": " + why).orElse("");
  }
}
