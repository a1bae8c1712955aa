package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;

/** Somebody who fills in a sheet: digits of the open set, and ticks. */
final class CardWriter {

  /** An office pen's line in millimetres. */
  private static final double PEN = 0.5;

  private final Layout layout;
  private final RandomGenerator random;
  private final List<Hand> hands = new ArrayList<>();

  /** What a reader should say of each field filled in. */
  private final Map<String, String> answers = new TreeMap<>();

  /** Begins on an empty sheet. */
  CardWriter(Layout layout, RandomGenerator random) {
    this.layout = layout;
    this.random = random;
  }

  /** Ticks one of a choice's boxes. */
  CardWriter tick(String key, String value) {
    ((Field.Choice) layout.field(key))
        .options().stream()
            .filter(option -> option.value().equals(value))
            .forEach(option -> hands.add(Tick.draw(random).in(option.box(), PEN, random)));
    answers.put(key, value);
    return this;
  }

  /**
   * Writes a number.
   *
   * @param boxes a character for each box, a blank to leave it empty
   * @param says the number as a reader tells it
   */
  CardWriter write(String key, String boxes, String says) {
    List<Field.Digit> digits = ((Field.Number) layout.field(key)).digits();
    for (int i = 0; i < boxes.length(); i++) {
      if (boxes.charAt(i) != ' ') {
        List<byte[]> of = SomeDigits.of(boxes.charAt(i) - '0');
        PenMark mark = Marks.hand(of.get(random.nextInt(of.size())), random);
        hands.add(Hand.in(digits.get(i).box(), mark, random));
      }
    }
    answers.put(key, says);
    return this;
  }

  /** All that was written. */
  List<Hand> hands() {
    return List.copyOf(hands);
  }

  /** Field key to what was meant. */
  Map<String, String> answers() {
    return Map.copyOf(answers);
  }
}
