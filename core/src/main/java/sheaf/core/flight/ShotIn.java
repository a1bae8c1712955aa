package sheaf.core.flight;

/**
 * A sight mark that was shot in.
 *
 * @param metres how far away the target was, above zero
 * @param mark on the sight's scale
 */
public record ShotIn(double metres, double mark) {

  /** Throws when the distance is not above zero or the mark not finite. */
  public ShotIn {
    if (!(metres > 0) || !Double.isFinite(metres) || !Double.isFinite(mark)) {
      throw new IllegalArgumentException(
          "a mark must be finite and have a distance: " + metres + ", " + mark);
    }
  }
}
