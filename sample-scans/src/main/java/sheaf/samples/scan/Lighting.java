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
 * @param tint by what share green is brighter than both, as under tubes; may be negative
 * @param exposure how bright the camera made it all, 1 for white paper just below full white
 * @param glare grey levels that a flash adds where paper and toner mirror it
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
    double warmth,
    double tint,
    double exposure,
    double glare) {

  /** Shade is bluer than sun by this share. */
  private static final double SKY = 0.06;

  /** Width of a flash's mirrored spot, as a share of the camera's distance. */
  private static final double SPOT = 0.11;

  /**
   * Draws what is usual: uneven, a shadow in four of ten pictures, half of them hard, a flash in a
   * seventh, lamps and daylight that the camera took for white more or less well.
   */
  public static Lighting draw(RandomGenerator random) {
    boolean shaded = random.nextInt(10) < 4;
    boolean hard = random.nextBoolean();
    boolean flash = random.nextInt(7) == 0;
    boolean indoors = random.nextBoolean();
    return new Lighting(
        random.nextDouble(-0.3, 0.3),
        random.nextDouble(-0.25, 0.25),
        random.nextDouble(0, 0.35),
        flash ? random.nextDouble(0.1, 0.35) : 0,
        shaded ? random.nextDouble(0.2, 0.6) : 0,
        random.nextDouble(2 * Math.PI),
        random.nextDouble(-90, 90),
        hard ? random.nextDouble(0.6, 3) : random.nextDouble(3, 25),
        indoors ? random.nextDouble(0, 0.2) : random.nextDouble(-0.1, 0.06),
        indoors ? random.nextDouble(-0.03, 0.05) : random.nextDouble(-0.02, 0.02),
        random.nextDouble(0.72, 1.08),
        flash ? random.nextDouble(15, 90) : 0);
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
    lit *= exposure;
    rgb[0] *= (float) (lit * (1 + warmth / 2 - tint / 2 - blue));
    rgb[1] *= (float) (lit * (1 + tint / 2));
    rgb[2] *= (float) (lit * (1 - warmth / 2 - tint / 2 + blue));
  }

  /**
   * Grey levels that paper adds where it mirrors the flash.
   *
   * @param away millimetres on the sheet from where the camera is mirrored
   * @param distance of the camera, in millimetres
   */
  float mirrored(double away, double distance) {
    double spot = away / (SPOT * distance);
    return (float) (glare * Math.exp(-spot * spot / 2));
  }

  private double covered(double x, double y, Clouds edge) {
    double into =
        x * Math.cos(shadowAngle) + y * Math.sin(shadowAngle) - shadowFrom + 8 * edge.at(x, y);
    double t = Math.max(0, Math.min(1, 0.5 + into / (2 * penumbra)));
    return t * t * (3 - 2 * t);
  }
}
