package sheaf.samples.scene;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.samples.raster.Clouds;

/**
 * How a sheet's paper and print look.
 *
 * @param tint of the paper
 * @param mottle strength of the paper's clouds, 1 for usual
 * @param creases where it was once folded or bent
 * @param toner grey of the print where it should be black
 */
public record PaperLook(Color tint, double mottle, int creases, int toner) {

  private static final int WHITE = 255;

  /** A crease's width in millimetres. */
  private static final double CREASE = 0.6;

  /** Draws a look: some paper is cream, some toner is thin. */
  public static PaperLook draw(RandomGenerator random) {
    int tone = random.nextInt(238, 254);
    int warm = random.nextInt(0, 16);
    return new PaperLook(
        new Color(tone, tone - warm / 3, tone - warm),
        random.nextDouble(0.4, 1.6),
        random.nextInt(4) == 0 ? random.nextInt(1, 3) : 0,
        random.nextInt(12, 50));
  }

  /** Gives a freshly rendered page this look. */
  void apply(int[] pixels, int width, double pixelsPerMm, RandomGenerator random) {
    Clouds wide = new Clouds(11 * pixelsPerMm, random);
    Clouds middle = new Clouds(2.6 * pixelsPerMm, random);
    Clouds fine = new Clouds(0.5 * pixelsPerMm, random);
    List<Crease> bends = new ArrayList<>();
    int height = pixels.length / width;
    for (int i = 0; i < creases; i++) {
      bends.add(Crease.draw(width, height, pixelsPerMm, random));
    }
    float[] paper = {tint.getRed() / 255f, tint.getGreen() / 255f, tint.getBlue() / 255f};
    float strength = (float) mottle;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float grain = fine.at(x, y);
        float cloud = middle.at(x, y);
        float tone = 1 + strength * (0.007f * wide.at(x, y) + 0.01f * cloud + 0.011f * grain);
        for (Crease bend : bends) {
          tone *= bend.tone(x, y);
        }
        float thin = toner * (1 + 0.25f * cloud + 0.35f * grain);
        pixels[y * width + x] = aged(pixels[y * width + x], paper, thin, tone);
      }
    }
  }

  private static int aged(int rgb, float[] paper, float toner, float tone) {
    int aged = 0;
    for (int c = 0; c < 3; c++) {
      int value = rgb >> (16 - 8 * c) & 0xFF;
      float light = toner + (WHITE - toner) * value / WHITE;
      aged = aged << 8 | Page.clamp(light * paper[c] * tone);
    }
    return aged;
  }

  /**
   * A bend across the whole sheet: one side faces the light, the other does not.
   *
   * @param a across
   * @param b down
   * @param c so that ax + by + c is the distance from the bend in widths of a crease
   * @param depth how much darker its dark side is
   * @param along unevenness along it
   */
  private record Crease(double a, double b, double c, double depth, Clouds along) {

    static Crease draw(int width, int height, double pixelsPerMm, RandomGenerator random) {
      boolean level = random.nextBoolean();
      double angle = (level ? Math.PI / 2 : 0) + random.nextGaussian() * 0.04;
      double x = width * random.nextDouble(0.25, 0.75);
      double y = height * random.nextDouble(0.25, 0.75);
      double a = Math.cos(angle) / (CREASE * pixelsPerMm);
      double b = Math.sin(angle) / (CREASE * pixelsPerMm);
      double depth = random.nextDouble(0.02, 0.07);
      return new Crease(a, b, -a * x - b * y, depth, new Clouds(4 * pixelsPerMm, random));
    }

    float tone(int x, int y) {
      double away = a * x + b * y + c;
      if (Math.abs(away) > 6) {
        return 1;
      }
      double sharp = away * Math.exp(-away * away * 0.7);
      double soft = 0.25 * away * Math.exp(-Math.abs(away) * 0.6);
      return (float) (1 - depth * (sharp + soft) * (1 + along.at(x, y)));
    }
  }
}
