package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a number is written into boxes: digit boxes and the printed words between them.
 *
 * @param parts left to right
 */
record NumberForm(List<Part> parts) {

  /** Room for the decimal point between two boxes, in millimetres. */
  private static final double POINT_WIDTH = 2.6;

  private static final double WORD_GAP = 2.6;

  /** Rough width of a letter at the size used beside boxes, in millimetres; generous. */
  static final double LETTER_WIDTH = 1.9;

  /**
   * A digit box, when it has a place, or a word.
   *
   * @param place what the digit is worth
   * @param text the word, empty for a box
   * @param width room it takes, in millimetres
   */
  record Part(OptionalDouble place, String text, double width) {}

  /** Whole inches and sixteenths: {@code [ ][ ] [ ][ ] /16 in}. */
  static NumberForm sixteenths(int wholeDigits) {
    List<Part> parts = whole(wholeDigits);
    parts.add(word("", WORD_GAP));
    parts.add(digit(10 / 16.0));
    parts.add(digit(1 / 16.0));
    parts.add(unit("/16 in"));
    return new NumberForm(parts);
  }

  /** Thirty-seconds of an inch, as small openings are told: {@code [ ][ ] /32 in}. */
  static NumberForm thirtySeconds() {
    return new NumberForm(List.of(digit(10 / 32.0), digit(1 / 32.0), unit("/32 in")));
  }

  /** A decimal below one with its point printed: {@code 0. [ ][ ][ ] in}. */
  static NumberForm belowOne(int decimals, String unit) {
    List<Part> parts = new ArrayList<>(List.of(word("0.", 2 * POINT_WIDTH)));
    double place = 1;
    for (int i = 0; i < decimals; i++) {
      place /= 10;
      parts.add(digit(place));
    }
    parts.add(unit(unit));
    return new NumberForm(parts);
  }

  /** Whole digits, a decimal point when there are decimals, and the unit in words. */
  static NumberForm decimal(int wholeDigits, int decimals, String unit) {
    List<Part> parts = whole(wholeDigits);
    if (decimals > 0) {
      parts.add(word(".", POINT_WIDTH));
    }
    double place = 1;
    for (int i = 0; i < decimals; i++) {
      place /= 10;
      parts.add(digit(place));
    }
    if (!unit.isEmpty()) {
      parts.add(unit(unit));
    }
    return new NumberForm(parts);
  }

  private static List<Part> whole(int digits) {
    List<Part> parts = new ArrayList<>();
    for (int i = digits - 1; i >= 0; i--) {
      parts.add(digit(Math.pow(10, i)));
    }
    return parts;
  }

  private static Part digit(double place) {
    return new Part(OptionalDouble.of(place), "", Drawing.DIGIT_WIDTH);
  }

  private static Part unit(String text) {
    return word(text, 2 + text.length() * LETTER_WIDTH);
  }

  private static Part word(String text, double width) {
    return new Part(OptionalDouble.empty(), text, width);
  }
}
