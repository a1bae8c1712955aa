package sheaf.samples.scan;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import sheaf.core.reading.PrintScale;
import sheaf.samples.raster.Clouds;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/**
 * A photo of a sheet that hangs on a board or lies on a table.
 *
 * @param width of the picture as stored, in pixels
 * @param height the same, down
 * @param orientation that the file states: 1, 3, 6 or 8 of Exif
 * @param pose of the camera, as the picture is shown
 * @param distortion of the lens: how much farther out the picture's edge is seen; may be negative
 * @param bulge by which the paper stands off the board in its middle, in millimetres
 * @param lighting of the sheet
 * @param scale of the print
 * @param blur standard deviation of defocus, in pixels
 * @param motion by which the camera moved, in pixels
 * @param noise standard deviation of the sensor's noise on white, in grey levels
 * @param seed of all that is random
 */
public record PhonePhoto(
    int width,
    int height,
    int orientation,
    Pose pose,
    double distortion,
    double bulge,
    Lighting lighting,
    PrintScale scale,
    double blur,
    double motion,
    double noise,
    long seed) {

  /** Focal length in picture widths: a phone's main lens is like 26 to 28 mm on 36 mm film. */
  private static final double FOCAL = 27 / 36.0;

  /**
   * Points of a pixel at which light is gathered, spread along the way that the camera moved; two
   * are enough where the optics blur by half a pixel or more.
   */
  private static final int POINTS = 2;

  /** Phones brighten the middle tones. */
  private static final double GAMMA = 0.92;

  /** Takes the picture. */
  public BufferedImage take(Page page, Backdrop backdrop) {
    SplittableRandom random = new SplittableRandom(seed);
    Eye eye = new Eye(page, backdrop, random);
    Tones tones = new Tones(GAMMA, 0.7 * noise, noise, random);
    double angle = random.nextDouble(2 * Math.PI);
    return new Exposure(width, height, true, blur, tones).take(eye, points(angle));
  }

  private double[][] points(double angle) {
    double[][] points = new double[POINTS][];
    for (int i = 0; i < POINTS; i++) {
      double share = (i + 0.5) / POINTS;
      double moved = motion * (share - 0.5);
      points[i] = new double[] {share + moved * Math.cos(angle), share + moved * Math.sin(angle)};
    }
    return points;
  }

  /** What the camera sees through each place of the picture. */
  private final class Eye implements Exposure.View {

    private final Sampler sampler;
    private final double pageWidth;
    private final double pageHeight;
    private final double focal = FOCAL * Math.max(width, height);
    private final double[][] axes;
    private final double[] camera;
    private final Bulge paper;
    private final boolean upright;
    private final double facing;
    private final Clouds shadowEdge;

    Eye(Page page, Backdrop backdrop, SplittableRandom random) {
      sampler = new Sampler(page, backdrop);
      pageWidth = page.width() / page.pixelsPerMm() * scale.x();
      pageHeight = page.height() / page.pixelsPerMm() * scale.y();
      Pose stored = asStored();
      axes = stored.axes();
      camera = stored.place(width, height, pageWidth, pageHeight, focal);
      upright = random.nextBoolean();
      paper = new Bulge(upright ? pageWidth : pageHeight, bulge);
      facing = random.nextDouble(-0.8, 0.8);
      shadowEdge = new Clouds(80, random);
    }

    @Override
    public void light(double x, double y, float[] rgb) {
      double right = (x - width / 2.0) / focal;
      double down = (y - height / 2.0) / focal;
      double farther = 1 + distortion * (right * right + down * down);
      right *= farther;
      down *= farther;
      double dx = axes[0][0] * right + axes[1][0] * down + axes[2][0];
      double dy = axes[0][1] * right + axes[1][1] * down + axes[2][1];
      double dz = axes[0][2] * right + axes[1][2] * down + axes[2][2];
      double px = 0;
      double py = 0;
      double rise = 0;
      // Where the ray meets paper that stands off the board by little: three steps are plenty.
      for (int step = 0; step < (bulge == 0 ? 1 : 3); step++) {
        double t = (-rise - camera[2]) / dz;
        px = camera[0] + t * dx;
        py = camera[1] + t * dy;
        boolean onSheet = Math.abs(upright ? py : px) < (upright ? pageHeight : pageWidth) / 2;
        rise = onSheet ? paper.height(upright ? px : py) : 0;
      }
      seen(px, py, rgb);
      lighting.apply(2 * x / width - 1, 2 * y / height - 1, px, py, shadowEdge, rgb);
    }

    private void seen(double px, double py, float[] rgb) {
      double across = upright ? paper.onPaper(px) : px;
      double along = upright ? py : paper.onPaper(py);
      sampler.light(
          (across + pageWidth / 2) / scale.x(), (along + pageHeight / 2) / scale.y(), rgb);
      float lit = (float) (1 + facing * paper.slope(upright ? px : py));
      for (int c = 0; c < 3; c++) {
        rgb[c] *= lit;
      }
    }
  }

  /** The pose as the stored picture shows it, which a viewer turns by the stated orientation. */
  private Pose asStored() {
    int turn =
        switch (orientation) {
          case 1 -> 0;
          case 3 -> 180;
          case 6 -> -90;
          case 8 -> 90;
          default -> throw new IllegalArgumentException("not a turn: " + orientation);
        };
    return new Pose(
        pose.tilt(), pose.toward(), pose.roll() + turn, pose.fill(), pose.aimX(), pose.aimY());
  }
}
