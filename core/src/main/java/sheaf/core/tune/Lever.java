package sheaf.core.tune;

import java.util.Locale;

/**
 * One thing to move, along one way, in one kind of step.
 *
 * @param part what
 * @param axis which way
 * @param step what its moves are counted in
 */
public record Lever(Part part, Axis axis, Step step) {

  /** The name in JSON: {@code rest sideways}. */
  public String label() {
    return part.label() + " " + axis.name().toLowerCase(Locale.ROOT);
  }
}
