package sheaf.samples.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/**
 * A flatbed scanner.
 *
 * @param dpi of the scan
 * @param colour or grey
 * @param quarterTurns how the sheet lies, 0 to 3, clockwise
 * @param skew on top of that, in degrees
 * @param scale of the print
 * @param blur standard deviation of the optics' blur, in pixels
 * @param noise standard deviation of the sensor's noise on white, in grey levels
 * @param gamma of the tone curve, 1 for none
 * @param feed greatest share by which the lamp's feed is too fast or too slow
 * @param dust specks on the glass
 * @param seed of all that is random
 */
public record FlatbedScan(
    int dpi,
    boolean colour,
    int quarterTurns,
    double skew,
    PrintScale scale,
    double blur,
    double noise,
    double gamma,
    double feed,
    int dust,
    long seed) {

  private static final double MM_PER_INCH = 25.4;

  /** The glass beyond the sheet, in millimetres. */
  private static final double BEYOND = 4;

  /** Scans a page that lies under what is seen through its holes and beside it. */
  public BufferedImage scan(Page page, Backdrop backdrop) {
    SplittableRandom random = new SplittableRandom(seed);
    double perMm = dpi / MM_PER_INCH;
    Glass glass = new Glass(page, new Sampler(page, backdrop), random.nextDouble(2 * Math.PI));
    Exposure exposure =
        new Exposure(
            (int) Math.round(glass.width * perMm),
            (int) Math.round(glass.height * perMm),
            colour,
            blur,
            Streak.NONE,
            0,
            new Tones(gamma, noise, 0.8 * noise, random));
    BufferedImage image = exposure.take(glass, points(page.pixelsPerMm() / perMm));
    soil(image, perMm, random);
    return image;
  }

  /** The page as it lies on the glass. */
  private final class Glass implements Exposure.View {

    private final Sampler sampler;
    private final double pageWidth;
    private final double pageHeight;
    private final double phase;
    private final double cos = Math.cos(Math.toRadians(90 * quarterTurns + skew));
    private final double sin = Math.sin(Math.toRadians(90 * quarterTurns + skew));

    /** The glass that is scanned, in millimetres. */
    final double width;

    final double height;

    private double lastY = Double.NaN;
    private double lastDown;

    Glass(Page page, Sampler sampler, double phase) {
      this.sampler = sampler;
      this.phase = phase;
      pageWidth = page.width() / page.pixelsPerMm();
      pageHeight = page.height() / page.pixelsPerMm();
      boolean lying = quarterTurns % 2 == 1;
      width = 2 * BEYOND + (lying ? pageHeight * scale.y() : pageWidth * scale.x());
      height = 2 * BEYOND + (lying ? pageWidth * scale.x() : pageHeight * scale.y());
    }

    @Override
    public void light(double x, double y, float[] rgb) {
      double across = x * MM_PER_INCH / dpi - width / 2;
      double down = down(y);
      sampler.light(
          (across * cos + down * sin) / scale.x() + pageWidth / 2,
          (-across * sin + down * cos) / scale.y() + pageHeight / 2,
          rgb);
    }

    /** Where the lamp truly is, in millimetres from the middle; it is asked for row by row. */
    private double down(double y) {
      if (y != lastY) {
        lastY = y;
        double meant = y * MM_PER_INCH / dpi;
        double turn = 2 * Math.PI / height;
        // The derivative of this sine is the feed's error.
        lastDown = meant - height / 2 + feed / turn * Math.sin(turn * meant + phase);
      }
      return lastDown;
    }
  }

  /** As many points in a pixel as page pixels lie under it. */
  private static double[][] points(double reduction) {
    int side = Math.max(1, (int) Math.ceil(reduction - 0.2));
    double[][] points = new double[side * side][];
    for (int i = 0; i < points.length; i++) {
      points[i] = new double[] {(i % side + 0.5) / side, (i / side + 0.5) / side};
    }
    return points;
  }

  /** Dust and fluff on the glass. */
  private void soil(BufferedImage image, double perMm, RandomGenerator random) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int i = 0; i < dust; i++) {
      int tone = random.nextInt(3) == 0 ? 255 : random.nextInt(60, 170);
      g.setColor(new Color(tone, tone, tone, random.nextInt(60, 200)));
      double size = perMm * random.nextDouble(0.08, 0.4);
      double x = random.nextDouble(image.getWidth());
      double y = random.nextDouble(image.getHeight());
      g.rotate(random.nextDouble(Math.PI), x, y);
      g.fill(new Ellipse2D.Double(x, y, size, size * random.nextDouble(0.3, 1)));
      g.setTransform(new AffineTransform());
    }
    g.dispose();
  }
}
