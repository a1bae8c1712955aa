package sheaf.core.answer;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.answer.TypedValue.NotUnderstoodException;
import sheaf.core.answer.TypedValue.Range;
import sheaf.core.layout.Field;
import sheaf.core.page.MmRect;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;

/**
 * A doubt about a sheet, as a person is asked about it.
 *
 * @param sheet the number of the sheet
 * @param about what it is about
 * @param doubts the question in words; at least one
 * @param look the part of the page that a person must see to answer; empty for all of it
 */
public record Question(int sheet, About about, List<Reason> doubts, Optional<MmRect> look) {

  /** Copies the list. */
  public Question {
    doubts = List.copyOf(doubts);
  }

  /** What a question is about, and so which answers there are. */
  public sealed interface About {

    /**
     * A field.
     *
     * @param field of the sheet's layout
     * @param guess what is likeliest, with its unit; empty when nothing is
     * @param seen what the machine read there, with its unit; empty for nothing
     */
    record OfField(Field field, String guess, String seen) implements About {}

    /**
     * A hole.
     *
     * @param hole as it was found; with a person's word, where there is one
     */
    record OfHole(Hole hole) implements About {}

    /**
     * What is seen in a zone of a tear sheet.
     *
     * @param zone its number
     */
    record OfTear(int zone) implements About {}

    /** The sheet as a whole, or something that has no better answer than a yes. */
    record OfSheet() implements About {}
  }

  /** What accepting means, in a few words; empty where there is nothing to accept. */
  public Optional<String> offer() {
    if (about instanceof About.OfField field) {
      return Optional.of(field.guess()).filter(guess -> !guess.isEmpty());
    }
    if (about instanceof About.OfHole of) {
      return Optional.of(
          of.hole().head() == Head.UNKNOWN ? "a hole, head unknown" : spoken(of.hole().head()));
    }
    return Optional.of("as read");
  }

  private static String spoken(Head head) {
    return head == Head.FIELD ? "field point" : head.label();
  }

  /** What may be typed instead, in words. */
  public String choices() {
    if (about instanceof About.OfField of) {
      return of.field() instanceof Field.Choice choice
          ? String.join(" / ", choice.options().stream().map(Field.Option::value).toList())
              + " / blank"
          : "the number, or blank";
    }
    if (about instanceof About.OfHole) {
      return "field / broadhead / none";
    }
    return about instanceof About.OfTear ? "none" : "nothing else";
  }

  /** The whole question, as one text. */
  public String words() {
    return String.join(" ", doubts.stream().map(Reason::message).distinct().toList());
  }

  /**
   * What a person says who accepts the offer; empty where there is none.
   *
   * @throws NotUnderstoodException when the offer is no value of the field
   */
  public List<Said> accepted() throws NotUnderstoodException {
    if (about instanceof About.OfField of) {
      return of.guess().isEmpty() ? List.of() : List.of(value(of, of.guess(), Range.ANY));
    }
    return doubts.stream().<Said>map(Said.AsRead::new).toList();
  }

  /**
   * What was typed instead.
   *
   * @throws NotUnderstoodException with a sentence that says what may be typed
   */
  public Said typed(String text) throws NotUnderstoodException {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (about instanceof About.OfField of) {
      return value(of, word.equals("blank") ? "" : text, Range.USUAL);
    }
    if (about instanceof About.OfHole of) {
      return hole(of.hole(), word);
    }
    if (about instanceof About.OfTear of && word.equals("none")) {
      return new Said.NoTear(of.zone());
    }
    throw new NotUnderstoodException("takes " + choices() + ", not '" + text.strip() + "'");
  }

  private static Said value(About.OfField of, String text, Range range)
      throws NotUnderstoodException {
    return TypedValue.of(of.field(), text, range, Teller.LOOKED, of.seen());
  }

  private Said hole(Hole hole, String word) throws NotUnderstoodException {
    return switch (word) {
      case "none", "no hole" -> new Said.NoHole(hole.axis());
      case "field", "field point", "f" -> headed(hole, Head.FIELD);
      case "broadhead", "b" -> headed(hole, Head.BROADHEAD);
      default -> throw new NotUnderstoodException("takes " + choices() + ", not '" + word + "'");
    };
  }

  private static Said headed(Hole hole, Head head) {
    return new Said.HoleAt(hole.axis(), hole.axis(), head, hole.aim());
  }
}
