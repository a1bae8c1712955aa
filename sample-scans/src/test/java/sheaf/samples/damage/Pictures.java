package sheaf.samples.damage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import javax.imageio.ImageIO;
import sheaf.samples.scan.ScanFile;

/** What can be done to a picture of a sheet. Each returns a new picture. */
final class Pictures {

  private static final int WHITE = 255;
  private static final Color TABLE = new Color(120, 110, 100);

  private Pictures() {}

  /** The pixels of a JPEG or PNG file, as stored. */
  static BufferedImage of(byte[] file) {
    try {
      BufferedImage stored = ImageIO.read(new ByteArrayInputStream(file));
      return drawn(stored, stored.getWidth(), stored.getHeight(), new AffineTransform());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JPEG of good quality that states no resolution. */
  static byte[] file(BufferedImage picture) {
    return ScanFile.jpeg(picture, 88, 0);
  }

  static BufferedImage mirrored(BufferedImage picture) {
    AffineTransform flip = new AffineTransform(-1, 0, 0, 1, picture.getWidth(), 0);
    return drawn(picture, picture.getWidth(), picture.getHeight(), flip);
  }

  static BufferedImage upsideDown(BufferedImage picture) {
    AffineTransform turn =
        new AffineTransform(-1, 0, 0, -1, picture.getWidth(), picture.getHeight());
    return drawn(picture, picture.getWidth(), picture.getHeight(), turn);
  }

  /** Scaled by a factor each way; a smaller one averages, as software does. */
  static BufferedImage scaled(BufferedImage picture, double across, double down) {
    int width = (int) Math.round(picture.getWidth() * across);
    int height = (int) Math.round(picture.getHeight() * down);
    if (across < 0.6 && down < 0.6) {
      return scaled(scaled(picture, 0.6, 0.6), across / 0.6, down / 0.6);
    }
    return drawn(picture, width, height, AffineTransform.getScaleInstance(across, down));
  }

  /** A part of it, in shares of its width and height. */
  static BufferedImage part(
      BufferedImage picture, double x, double y, double width, double height) {
    BufferedImage cut =
        picture.getSubimage(
            (int) (x * picture.getWidth()),
            (int) (y * picture.getHeight()),
            (int) (width * picture.getWidth()),
            (int) (height * picture.getHeight()));
    return drawn(cut, cut.getWidth(), cut.getHeight(), new AffineTransform());
  }

  /** Two on one table, the second laid down at a place of the table over the first. */
  static BufferedImage together(BufferedImage under, BufferedImage over, int x, int y) {
    BufferedImage table =
        new BufferedImage(
            Math.max(under.getWidth(), x + over.getWidth()),
            Math.max(under.getHeight(), y + over.getHeight()),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = table.createGraphics();
    g.setColor(TABLE);
    g.fillRect(0, 0, table.getWidth(), table.getHeight());
    g.drawImage(under, 0, 0, null);
    g.drawImage(over, x, y, null);
    g.dispose();
    return table;
  }

  /** Out of focus: a bell-shaped blur of so many pixels' standard deviation. */
  static BufferedImage blurred(BufferedImage picture, double sigma) {
    int reach = (int) Math.ceil(3 * sigma);
    float[] bell = new float[2 * reach + 1];
    float sum = 0;
    for (int i = 0; i < bell.length; i++) {
      bell[i] = (float) Math.exp(-(i - reach) * (i - reach) / (2 * sigma * sigma));
      sum += bell[i];
    }
    for (int i = 0; i < bell.length; i++) {
      bell[i] /= sum;
    }
    ConvolveOp across =
        new ConvolveOp(new Kernel(bell.length, 1, bell), ConvolveOp.EDGE_NO_OP, null);
    ConvolveOp down = new ConvolveOp(new Kernel(1, bell.length, bell), ConvolveOp.EDGE_NO_OP, null);
    return down.filter(across.filter(picture, null), null);
  }

  /** Every grey level turned into another, the same for the three colours. */
  static BufferedImage toned(BufferedImage picture, IntUnaryOperator tone) {
    return toned(picture, tone, tone, tone);
  }

  static BufferedImage toned(
      BufferedImage picture, IntUnaryOperator red, IntUnaryOperator green, IntUnaryOperator blue) {
    int[] reds = table(red);
    int[] greens = table(green);
    int[] blues = table(blue);
    int width = picture.getWidth();
    int[] pixels = picture.getRGB(0, 0, width, picture.getHeight(), null, 0, width);
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] =
          reds[pixels[i] >> 16 & WHITE] << 16
              | greens[pixels[i] >> 8 & WHITE] << 8
              | blues[pixels[i] & WHITE];
    }
    BufferedImage toned = new BufferedImage(width, picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    toned.setRGB(0, 0, width, picture.getHeight(), pixels, 0, width);
    return toned;
  }

  /** With a sensor's noise of so many grey levels' standard deviation. */
  static BufferedImage noisy(BufferedImage picture, double sigma, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    BufferedImage noisy = toned(picture, grey -> grey);
    for (int y = 0; y < noisy.getHeight(); y++) {
      for (int x = 0; x < noisy.getWidth(); x++) {
        int rgb = noisy.getRGB(x, y);
        int off = (int) Math.round(sigma * random.nextGaussian());
        noisy.setRGB(
            x,
            y,
            clamp((rgb >> 16 & WHITE) + off) << 16
                | clamp((rgb >> 8 & WHITE) + off) << 8
                | clamp((rgb & WHITE) + off));
      }
    }
    return noisy;
  }

  static int clamp(double grey) {
    return (int) Math.max(0, Math.min(WHITE, Math.round(grey)));
  }

  private static int[] table(IntUnaryOperator tone) {
    int[] table = new int[WHITE + 1];
    Arrays.setAll(table, grey -> clamp(tone.applyAsInt(grey)));
    return table;
  }

  private static BufferedImage drawn(
      BufferedImage picture, int width, int height, AffineTransform how) {
    BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = drawn.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(picture, how, null);
    g.dispose();
    return drawn;
  }
}
