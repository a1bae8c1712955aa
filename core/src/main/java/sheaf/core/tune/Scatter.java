package sheaf.core.tune;

/**
 * How shots scatter about their centres, over all sheets of a job.
 *
 * @param variance in each direction, in square millimetres at 20 yd; above zero
 * @param freedom shots less the centres estimated from them; 1 or more
 */
public record Scatter(double variance, int freedom) {

  /** Throws when a component is out of the range it is described with. */
  public Scatter {
    if (!(variance > 0) || freedom < 1) {
      throw new IllegalArgumentException(
          "scatter must be above zero and known: " + variance + ", " + freedom);
    }
  }
}
