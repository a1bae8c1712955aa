package sheaf.samples.scan;

import java.util.random.RandomGenerator;
import sheaf.samples.raster.Clouds;

/**
 * How a sheet is lit that somebody photographs.
 *
 * @param across by what share the right of the picture is brighter than the left; may be negative
 * @param down by what share its bottom is brighter than its top
 * @param vignette by what share its corners are darker
 * @param flash by what share its middle is brighter from a flash
 * @param shadow by what share a shadow dims the part of the sheet that it covers; 0 for none
 * @param shadowAngle direction toward the shaded part, in radians
 * @param shadowFrom where the shadow begins, in millimetres from the sheet's middle
 * @param penumbra half the width of its soft edge, in millimetres
 * @param warmth by what share red is brighter than blue; may be negative
 */
public record Lighting(
    double across,
    double down,
    double vignette,
    double flash,
    double shadow,
    double shadowAngle,
    double shadowFrom,
    double penumbra,
    double warmth) {

  /** Shade is bluer than sun by this share. */
  private static final double SKY = 0.06;

  /** Draws what is usual: uneven, a shadow in a third of the pictures, a flash in a sixth. */
  public static Lighting draw(RandomGenerator random) {
    return new Lighting(
        random.nextDouble(-0.3, 0.3),
        random.nextDouble(-0.25, 0.25),
        random.nextDouble(0, 0.35),
        random.nextInt(6) == 0 ? random.nextDouble(0.1, 0.35) : 0,
        random.nextInt(3) == 0 ? random.nextDouble(0.25, 0.55) : 0,
        random.nextDouble(2 * Math.PI),
        random.nextDouble(-60, 60),
        random.nextDouble(1.5, 12),
        random.nextDouble(-0.06, 0.12));
  }

  /**
   * Lights a place.
   *
   * @param u place in the picture, -1 at its left and 1 at its right
   * @param v the same, -1 at its top
   * @param x millimetres on the board from the sheet's middle
   * @param y the same, down
   * @param edge unevenness of the shadow's edge
   * @param rgb the light to change
   */
  void apply(double u, double v, double x, double y, Clouds edge, float[] rgb) {
    double radius = u * u + v * v;
    double tone = (1 + across * u / 2 + down * v / 2) * (1 - vignette * radius / 2);
    tone *= 1 - 0.5 * flash + flash * Math.exp(-2.5 * radius);
    double shade = shadow == 0 ? 0 : shadow * covered(x, y, edge);
    double lit = tone * (1 - shade);
    double blue = SKY * shade / Math.max(0.01, 1 - shade);
    rgb[0] *= (float) (lit * (1 + warmth / 2 - blue));
    rgb[1] *= (float) lit;
    rgb[2] *= (float) (lit * (1 - warmth / 2 + blue));
  }

  private double covered(double x, double y, Clouds edge) {
    double into =
        x * Math.cos(shadowAngle) + y * Math.sin(shadowAngle) - shadowFrom + 8 * edge.at(x, y);
    double t = Math.max(0, Math.min(1, 0.5 + into / (2 * penumbra)));
    return t * t * (3 - 2 * t);
  }
}
