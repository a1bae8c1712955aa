package sheaf.samples.hole;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.function.Consumer;
import sheaf.core.page.MmPoint;
import sheaf.samples.raster.Plane;

/** The fine pixels around a hole, in millimetres from its axis. */
public final class Canvas {

  /** Fine enough for a hairline of 0.1 mm, in pixels a millimetre. */
  private static final double FINE_ENOUGH = 20;

  /** Room around a hole for shading and shadow: so many radii, and so much beside a slit's end. */
  private static final double AROUND_RADII = 2.3;

  private static final double AROUND_END = 1.5;

  final int left;
  final int top;
  final int width;
  final int height;

  /** Fine pixels along a page pixel. */
  final int fine;

  /** Fine pixels a millimetre. */
  final double perMm;

  private final double originX;
  private final double originY;

  Canvas(TornHole hole, double pixelsPerMm, double offsetX, double offsetY) {
    this(reach(hole), pixelsPerMm, offsetX, offsetY);
  }

  /**
   * A canvas for all that is torn.
   *
   * @param reach left, top, right and bottom of it, in millimetres from the axis
   * @param pixelsPerMm of the page
   * @param offsetX of the axis from the middle of its pixel, in pixels, below 1
   * @param offsetY the same, down
   */
  public Canvas(double[] reach, double pixelsPerMm, double offsetX, double offsetY) {
    fine = Math.max(1, (int) Math.ceil(FINE_ENOUGH / pixelsPerMm));
    perMm = fine * pixelsPerMm;
    left = (int) Math.floor(reach[0] * pixelsPerMm) - 1;
    top = (int) Math.floor(reach[1] * pixelsPerMm) - 1;
    width = (int) Math.ceil(reach[2] * pixelsPerMm) + 2 - left;
    height = (int) Math.ceil(reach[3] * pixelsPerMm) + 2 - top;
    originX = fine * (0.5 + offsetX - left);
    originY = fine * (0.5 + offsetY - top);
  }

  /** Left, top, right and bottom of all that a hole changes. */
  private static double[] reach(TornHole hole) {
    double around = AROUND_RADII * hole.radius();
    double[] reach = {-around, -around, around, around};
    for (Cut slit : hole.slits()) {
      MmPoint end = slit.place(1, 0);
      reach[0] = Math.min(reach[0], end.x() - AROUND_END);
      reach[1] = Math.min(reach[1], end.y() - AROUND_END);
      reach[2] = Math.max(reach[2], end.x() + AROUND_END);
      reach[3] = Math.max(reach[3], end.y() + AROUND_END);
    }
    return reach;
  }

  /** Fine pixels a millimetre. */
  public double perMm() {
    return perMm;
  }

  /** An empty plane of its fine pixels. */
  public Plane plane() {
    return new Plane(width * fine, height * fine);
  }

  /** Millimetres from the axis to a column's middle. */
  public double x(int column) {
    return (column + 0.5 - originX) / perMm;
  }

  /** Millimetres from the axis to a row's middle. */
  public double y(int row) {
    return (row + 0.5 - originY) / perMm;
  }

  /** The column at so many millimetres from the axis. */
  public int column(double x) {
    return (int) Math.floor(x * perMm + originX);
  }

  /** The row at so many millimetres from the axis. */
  public int row(double y) {
    return (int) Math.floor(y * perMm + originY);
  }

  /** Draws in millimetres from the axis; white becomes 1, black 0. */
  public Plane drawn(Consumer<Graphics2D> drawing) {
    BufferedImage image =
        new BufferedImage(width * fine, height * fine, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    AffineTransform toPixels = AffineTransform.getTranslateInstance(originX, originY);
    toPixels.scale(perMm, perMm);
    g.setTransform(toPixels);
    drawing.accept(g);
    g.dispose();
    byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    float[] values = new float[bytes.length];
    for (int i = 0; i < bytes.length; i++) {
      values[i] = (bytes[i] & 0xFF) / 255f;
    }
    return new Plane(width * fine, height * fine, values);
  }

  /** A colour that becomes the number itself. */
  public static Color level(double share) {
    int value = (int) Math.max(0, Math.min(255, Math.round(255 * share)));
    return new Color(value, value, value);
  }

  /** A closed outline through some places. */
  public static Path2D closed(List<MmPoint> points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).x(), points.get(0).y());
    for (MmPoint point : points.subList(1, points.size())) {
      path.lineTo(point.x(), point.y());
    }
    path.closePath();
    return path;
  }

  /** What is painted, brought down to the page's pixels. */
  public HolePatch patch(Plane open, Plane shade, Plane behind, Plane bare) {
    return new HolePatch(
        left, top, width, height, reduced(open), reduced(shade), reduced(behind), reduced(bare));
  }

  /** Averages fine pixels down to the page's. */
  private float[] reduced(Plane plane) {
    float[] from = plane.values();
    float[] coarse = new float[width * height];
    float share = 1f / (fine * fine);
    for (int y = 0; y < height * fine; y++) {
      int line = y / fine * width;
      for (int x = 0; x < width * fine; x++) {
        coarse[line + x / fine] += from[y * width * fine + x] * share;
      }
    }
    return coarse;
  }
}
