package sheaf.samples.digit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.forms.BlankSheets;
import sheaf.scanner.opencv.Mats;

/** Makes marks: digits of a hand or of the printed face, and what is no digit. */
public final class Marks {

  /** Pixels across and down of every mark. */
  static final int SIDE = 112;

  /** Room left free around what is drawn, in pixels. */
  static final int ROOM = 16;

  private static final List<Font> FACES = List.of(face("Lato-Regular"), face("Lato-Bold"));

  /** What a hand writes that is no digit; none of these is like one. */
  private static final String LETTERS = "AEFHKMNPRTWXaehkmnrtwx#%=*";

  private Marks() {}

  private static Font face(String name) {
    String resource = "/sheaf/forms/fonts/" + name + ".ttf";
    try (InputStream font = BlankSheets.class.getResourceAsStream(resource)) {
      return Font.createFont(Font.TRUETYPE_FONT, font).deriveFont(100f);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(resource + " is no typeface", e);
    }
  }

  /** A digit of the set, written with a thinner or thicker pen. */
  public static PenMark hand(byte[] picture, RandomGenerator random) {
    double thin = random.nextDouble(0.3, 0.66);
    try (Mats mats = new Mats()) {
      Mat small = mats.own(new Mat(DigitSet.SIDE, DigitSet.SIDE, CvType.CV_8U));
      small.put(0, 0, picture);
      Mat large = mats.mat();
      small.convertTo(small, CvType.CV_32F, 1 / 255.0);
      Imgproc.resize(small, large, new Size(SIDE, SIDE), 0, 0, Imgproc.INTER_CUBIC);
      Imgproc.GaussianBlur(large, large, new Size(0, 0), 1.6);
      float[] cover = new float[SIDE * SIDE];
      large.get(0, 0, cover);
      float darkest = 0;
      for (float c : cover) {
        darkest = Math.max(darkest, c);
      }
      for (int i = 0; i < cover.length; i++) {
        double share = (cover[i] / darkest - thin) / 0.14 + 0.5;
        cover[i] = (float) Math.max(0, Math.min(1, share));
      }
      return new PenMark(SIDE, SIDE, cover);
    }
  }

  /** A digit of the face that sheets are printed in. */
  static PenMark printed(int digit, RandomGenerator random) {
    return glyph(String.valueOf(digit), FACES.get(random.nextInt(FACES.size())));
  }

  /** Words or points as they are printed beside boxes. */
  static PenMark words(String text) {
    return glyph(text, FACES.get(0));
  }

  /** Something that is no digit, and that one cannot take for a digit. */
  static PenMark rubbish(DigitSet digits, RandomGenerator random) {
    double kind = random.nextDouble();
    if (kind < 0.2) {
      return glyph(letter(random), FACES.get(random.nextInt(FACES.size())));
    } else if (kind < 0.4) {
      return strokes(HandLetters.draw(random), random);
    } else if (kind < 0.55) {
      return scribble(random);
    } else if (kind < 0.75) {
      return struck(digits, random);
    } else if (kind < 0.9) {
      return half(digits, random);
    }
    return stray(random);
  }

  private static String letter(RandomGenerator random) {
    return String.valueOf(LETTERS.charAt(random.nextInt(LETTERS.length())));
  }

  private static PenMark glyph(String text, Font face) {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = brush(image);
    GlyphVector glyphs = face.createGlyphVector(g.getFontRenderContext(), text);
    Rectangle2D box = glyphs.getVisualBounds();
    double scale = (SIDE - 2.0 * ROOM) / Math.max(box.getWidth(), box.getHeight());
    AffineTransform place = new AffineTransform();
    place.translate(SIDE / 2.0, SIDE / 2.0);
    place.scale(scale, scale);
    place.translate(-box.getCenterX(), -box.getCenterY());
    g.fill(place.createTransformedShape(glyphs.getOutline()));
    g.dispose();
    return PenMark.of(image);
  }

  private static Graphics2D brush(BufferedImage image) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.WHITE);
    return g;
  }

  /** Strokes of one pen through places from 0 to 1. */
  static PenMark strokes(List<List<double[]>> strokes, RandomGenerator random) {
    return strokes(strokes, random.nextDouble(4, 11), random);
  }

  /** The same with a pen of some width, in pixels. */
  static PenMark strokes(List<List<double[]>> strokes, double pen, RandomGenerator random) {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = brush(image);
    float width = (float) pen;
    g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    double room = SIDE - 2.0 * ROOM;
    for (List<double[]> stroke : strokes) {
      Path2D path = new Path2D.Double();
      for (int i = 0; i < stroke.size(); i++) {
        double x = ROOM + room * stroke.get(i)[0];
        double y = ROOM + room * stroke.get(i)[1];
        if (i == 0) {
          path.moveTo(x, y);
        } else {
          double[] last = stroke.get(i - 1);
          path.quadTo(
              ROOM + room * last[0] + random.nextGaussian() * 4,
              ROOM + room * last[1] + random.nextGaussian() * 4,
              x,
              y);
        }
      }
      g.draw(path);
    }
    g.dispose();
    return PenMark.of(image);
  }

  /** A pen that went to and fro, or a blot. */
  private static PenMark scribble(RandomGenerator random) {
    int turns = random.nextInt(6, 18);
    List<double[]> places = new ArrayList<>();
    boolean wild = random.nextBoolean();
    // Narrower ones can be taken for a thick 1.
    double wide = random.nextDouble(0.25, 0.5);
    for (int i = 0; i < turns; i++) {
      double x = wild ? random.nextDouble() : 0.5 + (i % 2 == 0 ? -wide : wide);
      double y = wild ? random.nextDouble() : i / (turns - 1.0);
      places.add(new double[] {x + random.nextGaussian() * 0.06, y + random.nextGaussian() * 0.04});
    }
    return strokes(List.of(places), random);
  }

  /** A digit that was struck out or written over. */
  private static PenMark struck(DigitSet digits, RandomGenerator random) {
    int which = random.nextInt(digits.size());
    PenMark digit = hand(digits.pictures()[which], random);
    if (random.nextInt(4) == 0) {
      return digit.over(other(digits, digits.labels()[which], random));
    }
    int[] extent = digit.extent();
    double middle = (extent[1] + extent[3]) / 2.0;
    List<List<double[]>> lines = new ArrayList<>();
    // One line through these makes a digit again: a 7 with its bar, a 1 that becomes a 4.
    boolean needsTwo = "0147".indexOf('0' + digits.labels()[which]) >= 0;
    int count = random.nextInt(needsTwo ? 2 : 1, 4);
    boolean up = random.nextBoolean();
    for (int i = 0; i < count; i++) {
      double y = share(middle) + random.nextGaussian() * 0.09;
      double tilt = (up ? -1 : 1) * random.nextDouble(0.7);
      lines.add(
          List.of(
              new double[] {share(extent[0]) - 0.2, y - tilt / 2},
              new double[] {share(extent[2]) + 0.2, y + tilt / 2}));
    }
    return digit.over(strokes(lines, random));
  }

  /** Another digit than that one, which makes both unreadable when written over each other. */
  private static PenMark other(DigitSet digits, byte than, RandomGenerator random) {
    int which = random.nextInt(digits.size());
    boolean same = digits.labels()[which] == than || digits.labels()[which] == 1 || than == 1;
    return same ? scribble(random) : hand(digits.pictures()[which], random);
  }

  private static double share(double pixel) {
    return (pixel - ROOM) / (SIDE - 2.0 * ROOM);
  }

  /** A part of a digit that is itself like no digit. */
  private static PenMark half(DigitSet digits, RandomGenerator random) {
    while (true) {
      int which = random.nextInt(digits.size());
      int digit = digits.labels()[which];
      int side = random.nextInt(3);
      if (List.of("045", "02", "2358").get(side).indexOf('0' + digit) >= 0) {
        PenMark whole = hand(digits.pictures()[which], random);
        int[] extent = whole.extent();
        double across = (extent[0] + extent[2]) / 2.0 / SIDE;
        double down = (extent[1] + extent[3]) / 2.0 / SIDE;
        return side == 0
            ? whole.part(0, 0, 1, down)
            : side == 1 ? whole.part(0, down, 1, 1) : whole.part(0, 0, across, 1);
      }
    }
  }

  /** A dash, a few dots, a comma, a cross or a check mark. */
  private static PenMark stray(RandomGenerator random) {
    double x = random.nextDouble(0.3, 0.7);
    double y = random.nextDouble(0.2, 0.8);
    double tilt = random.nextGaussian() * 0.12;
    List<List<double[]>> lines =
        switch (random.nextInt(4)) {
          case 0 -> List.of(line(0.05, y - tilt, 0.95, y + tilt));
          case 1 -> List.of(line(x, y, x + 0.02, y + 0.02), line(1 - x, 1 - y, 1.01 - x, 1 - y));
          case 2 -> List.of(line(0.1, 0.1 + tilt, 0.9, 0.9), line(0.9 + tilt, 0.1, 0.1, 0.9));
          default ->
              List.of(
                  List.of(
                      new double[] {0.05, 0.55 + tilt},
                      new double[] {0.35, 0.9},
                      new double[] {0.95, 0.15 + tilt}));
        };
    return strokes(lines, random);
  }

  private static List<double[]> line(double x1, double y1, double x2, double y2) {
    return List.of(new double[] {x1, y1}, new double[] {x2, y2});
  }
}
