package sheaf.samples.scan;

/**
 * A phone's lens after the phone's own correction.
 *
 * @param focal length in picture widths, of the longer side: 27/36 for the usual main lens
 * @param radial by what share of its distance from the middle a place one focal length away is seen
 *     farther out; negative for a barrel
 * @param outer the same with the fourth power of that distance
 */
public record Lens(double focal, double radial, double outer) {

  /** Like 27 mm on 36 mm film, and straight. */
  public static final Lens USUAL = new Lens(27 / 36.0, 0, 0);

  /** By what factor a place is seen farther out; r is its distance in focal lengths, squared. */
  double stretch(double r) {
    return 1 + radial * r + outer * r * r;
  }
}
