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
import sheaf.forms.BlankSheets;
import sheaf.samples.hole.HolePainter;
import sheaf.samples.hole.HolePatch;
import sheaf.samples.hole.TornHole;

/** A printed page on the table: one can write on it and shoot holes through it. */
public final class Page {

  private final BufferedImage image;
  private final int[] pixels;
  private final double pixelsPerMm;

  private Page(BufferedImage image, double pixelsPerMm) {
    this.image = image;
    this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    this.pixelsPerMm = pixelsPerMm;
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

  /** A brush for writing, in millimetres of the page. */
  public Graphics2D pen(Color ink) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(ink);
    g.scale(pixelsPerMm, pixelsPerMm);
    return g;
  }

  /** Gives the paper its tint and unevenness, and the toner its own. */
  public void age(Color tint, RandomGenerator random) {
    Mottle mottle = new Mottle(random, pixelsPerMm);
    float[] tints = {tint.getRed() / 255f, tint.getGreen() / 255f, tint.getBlue() / 255f};
    int toner = random.nextInt(12, 50);
    for (int y = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        int i = y * width() + x;
        int rgb = pixels[i];
        float cloud = mottle.at(x, y);
        int shifted = 0;
        for (int c = 0; c < 3; c++) {
          int value = rgb >> (16 - 8 * c) & 0xFF;
          float paper = (toner + (255 - toner) * value / 255f) * tints[c] * cloud;
          shifted = shifted << 8 | clamp(paper);
        }
        pixels[i] = shifted;
      }
    }
  }

  /**
   * Shoots a hole.
   *
   * @param axis on the page as designed
   * @param scale true millimetres for each millimetre of the page, so that the hole has its true
   *     size
   * @param behind tone of what lies behind
   */
  public void shoot(
      TornHole hole, MmPoint axis, double scale, Color behind, RandomGenerator random) {
    double resolution = pixelsPerMm / scale;
    double px = axis.x() * pixelsPerMm - 0.5;
    double py = axis.y() * pixelsPerMm - 0.5;
    int cx = (int) Math.round(px);
    int cy = (int) Math.round(py);
    HolePatch patch = HolePainter.paint(hole, resolution, px - cx, py - cy, random);
    int half = patch.side() / 2;
    for (int y = 0; y < patch.side(); y++) {
      for (int x = 0; x < patch.side(); x++) {
        int at = (cy - half + y) * width() + cx - half + x;
        boolean inside =
            cx - half + x >= 0
                && cx - half + x < width()
                && cy - half + y >= 0
                && cy - half + y < height();
        if (inside) {
          int i = y * patch.side() + x;
          pixels[at] = blend(pixels[at], behind, patch, i);
        }
      }
    }
  }

  private static int blend(int paper, Color behind, HolePatch patch, int i) {
    int[] back = {behind.getRed(), behind.getGreen(), behind.getBlue()};
    float open = patch.open()[i];
    int mixed = 0;
    for (int c = 0; c < 3; c++) {
      float front = (paper >> (16 - 8 * c) & 0xFF) * patch.shade()[i];
      float through = back[c] * patch.shadow()[i];
      mixed = mixed << 8 | clamp(front * (1 - open) + through * open);
    }
    return mixed;
  }

  static int clamp(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
