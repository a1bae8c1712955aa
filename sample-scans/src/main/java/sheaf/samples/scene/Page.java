package sheaf.samples.scene;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import sheaf.core.job.SheetCode;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.forms.BlankSheets;
import sheaf.samples.hole.HolePainter;
import sheaf.samples.hole.HolePatch;
import sheaf.samples.hole.TornHole;

/** A printed page on the table: one can write on it and shoot holes through it. */
public final class Page {

  private static final int FULL = 255;

  /** The paper's shadow falls this far onto what lies behind, in millimetres. */
  private static final double SHADOW = 0.5;

  private final BufferedImage image;
  private final int[] pixels;
  private final double pixelsPerMm;

  /** How much of what lies behind is already seen at a pixel, 0 to 255. */
  private final byte[] through;

  private Color paper = Color.WHITE;

  private Page(BufferedImage image, double pixelsPerMm) {
    this.image = image;
    this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    this.pixelsPerMm = pixelsPerMm;
    this.through = new byte[pixels.length];
  }

  /** Prints a sheet at so many pixels a millimetre. */
  public static Page print(SheetCode code, double pixelsPerMm) {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try {
      BlankSheets.write(List.of(code), pdf);
      try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
        float dpi = (float) (pixelsPerMm * 25.4);
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.RGB);
        return new Page(image, pixelsPerMm);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Width in pixels. */
  public int width() {
    return image.getWidth();
  }

  /** Height in pixels. */
  public int height() {
    return image.getHeight();
  }

  /** Resolution. */
  public double pixelsPerMm() {
    return pixelsPerMm;
  }

  /** All pixels, row by row, as 0xRRGGBB. */
  public int[] pixels() {
    return pixels;
  }

  /** Gives paper and print their look. */
  public void look(PaperLook look, RandomGenerator random) {
    look.apply(pixels, width(), pixelsPerMm, random);
    paper = look.tint();
  }

  /** A brush for writing, in millimetres of the page. */
  public Graphics2D pen(Color ink) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(ink);
    g.scale(pixelsPerMm, pixelsPerMm);
    return g;
  }

  /**
   * Shoots a hole.
   *
   * @param axis on the page as designed
   * @param scale true millimetres for each millimetre of the page, so that the hole has its true
   *     size
   * @param behind what is seen through it
   * @param light angle from which the light comes, in radians
   */
  public void shoot(
      TornHole hole,
      MmPoint axis,
      double scale,
      Backdrop behind,
      double light,
      RandomGenerator random) {
    tear(
        (perMm, right, down) -> HolePainter.paint(hole, perMm, right, down, light, random),
        axis,
        scale,
        behind);
  }

  /** Paints what is torn, at so many pixels a millimetre, its axis off a pixel's middle. */
  @FunctionalInterface
  public interface Torn {
    /**
     * Paints it.
     *
     * @param pixelsPerMm of the page, in true millimetres
     * @param right how far the axis lies off the middle of its pixel, in pixels, below 1
     * @param down the same, down
     */
    HolePatch paint(double pixelsPerMm, double right, double down);
  }

  /**
   * Tears the page.
   *
   * @param axis of what is torn, on the page as designed
   * @param scale true millimetres for each millimetre of the page
   * @param behind what is seen through it
   */
  public void tear(Torn torn, MmPoint axis, double scale, Backdrop behind) {
    double px = axis.x() * pixelsPerMm - 0.5;
    double py = axis.y() * pixelsPerMm - 0.5;
    int cx = (int) Math.round(px);
    int cy = (int) Math.round(py);
    HolePatch patch = torn.paint(pixelsPerMm / scale, px - cx, py - cy);
    float[] seen = new float[3];
    for (int y = 0; y < patch.height(); y++) {
      for (int x = 0; x < patch.width(); x++) {
        int column = cx + patch.left() + x;
        int row = cy + patch.top() + y;
        if (column >= 0 && column < width() && row >= 0 && row < height()) {
          behind.light((column + 0.5) / pixelsPerMm, (row + 0.5) / pixelsPerMm, seen);
          blend(row * width() + column, seen, patch, y * patch.width() + x);
        }
      }
    }
  }

  /** Whether something there is part of the page no more. */
  @FunctionalInterface
  interface Gone {
    /** How far inside what is gone a place lies, in millimetres of the page; below 0 outside. */
    double inside(double x, double y);
  }

  /**
   * Takes a part of the page away, so that what lies behind is seen, in the paper's shadow.
   *
   * @param room that the part lies in
   * @param light angle from which the light comes, in radians
   */
  void take(MmRect room, Gone part, Backdrop behind, double light) {
    float[] seen = new float[3];
    double dx = SHADOW * Math.cos(light);
    double dy = SHADOW * Math.sin(light);
    each(
        room,
        (at, x, y) -> {
          double open = Math.max(0, Math.min(1, 0.5 + part.inside(x, y) * pixelsPerMm));
          if (open > 0) {
            behind.light(x, y, seen);
            double lit = Math.max(0, Math.min(1, 0.5 + part.inside(x + dx, y + dy) / SHADOW));
            pixels[at] = mixed(pixels[at], seen, 0.8 + 0.2 * lit, open);
            through[at] = (byte) clamp(Math.max(through[at] & FULL, FULL * open));
          }
        });
  }

  /** How much darker a place is, 0 to 1. */
  @FunctionalInterface
  public interface Depth {
    /** At a place in millimetres of the page. */
    double at(double x, double y);
  }

  /**
   * Darkens a part of the page.
   *
   * @param room that it lies in
   * @param tint what the depth is multiplied by for red, green and blue
   */
  public void tint(MmRect room, Depth depth, float[] tint) {
    each(
        room,
        (at, x, y) -> {
          double deep = depth.at(x, y);
          int darker = 0;
          for (int c = 0; c < 3; c++) {
            int tone = pixels[at] >> (16 - 8 * c) & FULL;
            darker = darker << 8 | clamp(tone * (1 - deep * tint[c]));
          }
          pixels[at] = darker;
        });
  }

  /** Does something to a pixel. */
  @FunctionalInterface
  private interface Touch {
    /** To the pixel of an index, whose middle is a place in millimetres of the page. */
    void pixel(int at, double x, double y);
  }

  private void each(MmRect room, Touch touch) {
    for (int row = row(room.y()); row < row(room.bottom()); row++) {
      for (int column = column(room.x()); column < column(room.right()); column++) {
        touch.pixel(
            row * width() + column, (column + 0.5) / pixelsPerMm, (row + 0.5) / pixelsPerMm);
      }
    }
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(width(), Math.round(x * pixelsPerMm)));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(height(), Math.round(y * pixelsPerMm)));
  }

  private static int mixed(int front, float[] seen, double shadow, double open) {
    int mixed = 0;
    for (int c = 0; c < 3; c++) {
      int tone = front >> (16 - 8 * c) & FULL;
      mixed = mixed << 8 | clamp(tone * (1 - open) + seen[c] * shadow * open);
    }
    return mixed;
  }

  private void blend(int at, float[] seen, HolePatch patch, int i) {
    int[] bare = {paper.getRed(), paper.getGreen(), paper.getBlue()};
    float already = (through[at] & FULL) / (float) FULL;
    float open = patch.open()[i];
    float fibre = patch.bare()[i];
    float shade = patch.shade()[i] + (1 - patch.shade()[i]) * already;
    int mixed = 0;
    for (int c = 0; c < 3; c++) {
      float print = pixels[at] >> (16 - 8 * c) & FULL;
      float front = (print + fibre * Math.max(0, bare[c] - print) * (1 - already)) * shade;
      mixed = mixed << 8 | clamp(front * (1 - open) + seen[c] * patch.behind()[i] * open);
    }
    pixels[at] = mixed;
    through[at] = (byte) clamp(FULL * Math.max(already, open));
  }

  static int clamp(double value) {
    return (int) Math.max(0, Math.min(FULL, Math.round(value)));
  }
}
