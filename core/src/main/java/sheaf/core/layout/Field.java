package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;

/** Something a person fills in. */
public sealed interface Field {

  /** The name in JSON, unique on the sheet: {@code draw_length}. */
  String key();

  /** What a person calls it. */
  String label();

  /** The printed boxes that are ticked or written in, in reading order. */
  List<MmRect> boxes();

  /**
   * Boxes of which at most one is ticked. None ticked is a blank.
   *
   * @param key the name in JSON
   * @param label what a person calls it
   * @param unit the unit of the options when they are numbers
   * @param options at least one
   */
  record Choice(String key, String label, Optional<Unit> unit, List<Option> options)
      implements Field {
    /** Copies the options. */
    public Choice {
      options = List.copyOf(options);
    }

    @Override
    public List<MmRect> boxes() {
      return options.stream().map(Option::box).toList();
    }
  }

  /**
   * One box to tick.
   *
   * @param value what ticking it says: a word or a number
   * @param box the printed square
   */
  record Option(String value, MmRect box) {}

  /**
   * A number written one digit a box: the sum of digit times place.
   *
   * @param key the name in JSON
   * @param label what a person calls it
   * @param unit the unit of the number; empty when another field chooses it
   * @param digits left to right
   */
  record Number(String key, String label, Optional<Unit> unit, List<Digit> digits)
      implements Field {
    /** Copies the digits. */
    public Number {
      digits = List.copyOf(digits);
    }

    @Override
    public List<MmRect> boxes() {
      return digits.stream().map(Digit::box).toList();
    }
  }

  /**
   * A box for one digit.
   *
   * @param box the printed box
   * @param place what the digit is worth: 10, 1, 0.1, or 1/16 for the last digit of sixteenths
   */
  record Digit(MmRect box, double place) {}
}
