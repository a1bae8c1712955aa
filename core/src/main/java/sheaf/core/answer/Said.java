package sheaf.core.answer;

import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.layout.Aim;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;
import sheaf.core.reading.Reason;

/** One thing that a person said. Places are millimetres on the page as designed. */
public sealed interface Said {

  /**
   * What a field holds.
   *
   * @param key of the field
   * @param text as people write it, without the unit; empty when nothing is written there
   * @param value the text as a number in {@code unit}, where it is one
   * @param unit of the value, where it has one
   * @param teller how the person knew: {@link Teller#LOOKED} or {@link Teller#TYPED}
   * @param seen what the machine had surely or unsurely read by then, with its unit; empty for
   *     nothing
   */
  record Value(
      String key,
      String text,
      OptionalDouble value,
      Optional<Unit> unit,
      Teller teller,
      String seen)
      implements Said {
    /** Throws when a machine is named as the teller. */
    public Value {
      if (teller == Teller.MACHINE) {
        throw new IllegalArgumentException("what a machine read is no answer");
      }
    }

    /** The text with its unit; empty when nothing is written. */
    public String words() {
      return text + unit.map(u -> " " + u.symbol()).orElse("");
    }
  }

  /**
   * There is a hole: one that was found, moved or with another head, or one that was missed.
   *
   * @param near where it was shown before; {@code at} for one that was missed
   * @param at where the shaft's axis went through
   * @param head of the arrow
   * @param aim the dot that it was shot at
   */
  record HoleAt(MmPoint near, MmPoint at, Head head, Aim aim) implements Said {}

  /** What was found near this place is no hole. */
  record NoHole(MmPoint near) implements Said {}

  /**
   * There is one tear in a zone.
   *
   * @param point where the shaft's axis went in
   * @param tail the middle of what the vanes cut; the point itself for a bullet hole
   */
  record TearAt(int zone, MmPoint point, MmPoint tail) implements Said {}

  /** What was found in a zone is no tear. */
  record NoTear(int zone) implements Said {}

  /**
   * A doubt is none: what it is about is as the machine read it.
   *
   * @param doubt in the very words in which it was asked, so that another one is asked anew
   */
  record AsRead(Reason doubt) implements Said {}
}
