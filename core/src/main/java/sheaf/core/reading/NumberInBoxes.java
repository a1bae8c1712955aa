package sheaf.core.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Field;

/**
 * A number as it stands in its boxes. Boxes left empty before the first digit are usual; empty
 * tenths or sixteenths mean a whole number; any other gap leaves it open which number is meant.
 *
 * @param text as people write it: {@code 29 6/16}, {@code 62.5}
 * @param value in the field's unit
 * @param confidence that every box is read as meant, 0 to 1
 */
public record NumberInBoxes(String text, double value, double confidence) {

  /** Boxes in a row, such as those before the decimal point. */
  private record Run(String digits, boolean gap, boolean any) {

    /**
     * Joins boxes.
     *
     * @param boxes left to right
     * @param blankEnds whether the last ones may be left empty, as decimals may
     */
    static Run of(List<InBox> boxes, boolean blankEnds) {
      StringBuilder digits = new StringBuilder();
      boolean gap = false;
      boolean ended = false;
      for (InBox box : boxes) {
        if (box instanceof InBox.Digit digit) {
          gap |= ended;
          digits.append(digit.digit());
        } else {
          ended |= blankEnds || !digits.isEmpty();
        }
      }
      boolean any = !digits.isEmpty();
      boolean open = !blankEnds && any && ended;
      return new Run(digits.toString(), gap || open, any);
    }
  }

  /**
   * Reads the boxes of a field.
   *
   * @param boxes what each shows, in the field's order; none of them {@link InBox.Unclear}
   * @return empty when boxes are left empty where a digit must stand, or a fraction is no proper
   *     one
   */
  static Optional<NumberInBoxes> of(Field.Number field, List<InBox> boxes) {
    List<InBox> whole = new ArrayList<>();
    List<InBox> rest = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      (field.digits().get(i).place() >= 1 ? whole : rest).add(boxes.get(i));
    }
    int parts = parts(field);
    Run front = Run.of(whole, false);
    Run back = Run.of(rest, parts == 0);
    if (front.gap() || back.gap() || !front.any() && !back.any()) {
      return Optional.empty();
    }
    if (parts > 0 && back.any() && Integer.parseInt(back.digits()) >= parts) {
      return Optional.empty();
    }
    String text = parts > 0 ? fraction(front, back, parts) : decimal(front, back);
    return Optional.of(new NumberInBoxes(text, value(field, boxes), confidence(boxes)));
  }

  /** How many parts an inch has in the last boxes; 0 for decimals and whole numbers. */
  private static int parts(Field.Number field) {
    double last = field.digits().get(field.digits().size() - 1).place();
    for (int parts : new int[] {16, 32}) {
      if (last == 1.0 / parts) {
        return parts;
      }
    }
    return 0;
  }

  private static String fraction(Run front, Run back, int parts) {
    if (!back.any()) {
      return plain(front.digits());
    }
    String part = Integer.parseInt(back.digits()) + "/" + parts;
    return front.any() ? plain(front.digits()) + " " + part : part;
  }

  private static String decimal(Run front, Run back) {
    String whole = front.any() ? plain(front.digits()) : "0";
    return back.any() ? whole + "." + back.digits() : whole;
  }

  private static String plain(String digits) {
    return String.valueOf(Integer.parseInt(digits));
  }

  private static double value(Field.Number field, List<InBox> boxes) {
    double value = 0;
    for (int i = 0; i < boxes.size(); i++) {
      if (boxes.get(i) instanceof InBox.Digit digit) {
        value += digit.digit() * field.digits().get(i).place();
      }
    }
    // Tenths and hundredths are no binary numbers; a millionth is finer than any box.
    return Math.round(value * 1e6) / 1e6;
  }

  private static double confidence(List<InBox> boxes) {
    double all = 1;
    for (InBox box : boxes) {
      all *= box instanceof InBox.Digit digit ? digit.confidence() : 1;
    }
    return all;
  }
}
