package sheaf.core.group;

import java.util.Optional;
import sheaf.core.page.MmVector;

/**
 * How far the centre of one group lies from the centre of another.
 *
 * @param shift in millimetres on the target, x to the right, y down
 * @param region where the true shift lies with 95 % confidence, centred on {@code shift}; empty
 *     when the shots are too few, or too alike, to say
 */
public record Offset(MmVector shift, Optional<Ellipse> region) {

  /** Throws when the region is centred elsewhere. */
  public Offset {
    if (region.isPresent() && !region.get().centre().equals(shift)) {
      throw new IllegalArgumentException(
          "the region of a shift is centred on it: " + region.get().centre() + ", " + shift);
    }
  }

  /**
   * The compared group's centre minus the reference group's, as {@link Comparison#offset} sees it:
   * broadheads compared with field points give the way the broadheads went.
   */
  public static Offset between(Group reference, Group compared) {
    return Comparison.of(reference, compared).offset();
  }
}
