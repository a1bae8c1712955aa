package sheaf.samples.scene;

import java.awt.Color;
import java.util.random.RandomGenerator;
import sheaf.core.page.Paper;
import sheaf.samples.raster.Clouds;

/** What a sheet lies on: seen through its holes and beside it. */
@FunctionalInterface
public interface Backdrop {

  /** The light at a place in millimetres of the sheet's page; red, green and blue up to 255. */
  void light(double x, double y, float[] rgb);

  /**
   * Something to lay a sheet on.
   *
   * @param tone how light it is, 1 for as it should be
   */
  static Backdrop of(Behind behind, double tone, Paper paper, RandomGenerator random) {
    float[] colour = colour(behind.colour(), tone);
    return switch (behind) {
      case BACKING -> backing(colour, paper, random);
      case FOAM -> foam(colour, random);
      case WOOD -> wood(colour, random);
      case BLACK, GREY, WHITE, SKY -> plain(colour, random);
    };
  }

  private static float[] colour(Color colour, double tone) {
    return new float[] {
      (float) (colour.getRed() * tone),
      (float) (colour.getGreen() * tone),
      (float) (colour.getBlue() * tone)
    };
  }

  private static void set(float[] rgb, float[] colour, float factor) {
    for (int c = 0; c < 3; c++) {
      rgb[c] = colour[c] * factor;
    }
  }

  private static Backdrop plain(float[] colour, RandomGenerator random) {
    Clouds wide = new Clouds(25, random);
    return (x, y, rgb) -> set(rgb, colour, 1 + 0.012f * wide.at(x, y));
  }

  /** The printed page, laid down a little askew on a white lid; printers leave its edge white. */
  private static Backdrop backing(float[] colour, Paper paper, RandomGenerator random) {
    double margin = 5;
    double dx = random.nextDouble(-4, 4);
    double dy = random.nextDouble(-4, 4);
    double turn = Math.toRadians(random.nextDouble(-0.8, 0.8));
    Clouds toner = new Clouds(4, random);
    Clouds fine = new Clouds(0.4, random);
    float[] lid = colour(Behind.WHITE.colour(), random.nextDouble(0.94, 1));
    return (x, y, rgb) -> {
      double px = x + dx + turn * (y - paper.height() / 2);
      double py = y + dy - turn * (x - paper.width() / 2);
      boolean printed =
          px > margin
              && px < paper.width() - margin
              && py > margin
              && py < paper.height() - 2 * margin;
      float uneven = 1 + 0.04f * toner.at(x, y) + 0.03f * fine.at(x, y);
      set(rgb, printed ? colour : lid, printed ? uneven : 1);
    };
  }

  /** Layers of foam with the marks of many arrows. */
  private static Backdrop foam(float[] colour, RandomGenerator random) {
    Clouds grain = new Clouds(0.7, random);
    Clouds layers = new Clouds(5, random);
    Clouds wide = new Clouds(60, random);
    Clouds shots = new Clouds(7, random);
    Clouds ragged = new Clouds(1.5, random);
    return (x, y, rgb) -> {
      float layer = layers.at(x * 0.03, y);
      float worn = shots.at(x, y) + 0.05f * ragged.at(x, y) > 0.93f ? 0.4f : 1;
      set(rgb, colour, (1 + 0.25f * layer + 0.2f * grain.at(x, y) + 0.2f * wide.at(x, y)) * worn);
    };
  }

  /** Planks with grain along them. */
  private static Backdrop wood(float[] colour, RandomGenerator random) {
    double plank = random.nextDouble(70, 110);
    Clouds grain = new Clouds(1.2, random);
    Clouds rings = new Clouds(7, random);
    Clouds planks = new Clouds(1, random);
    return (x, y, rgb) -> {
      double number = Math.floor(y / plank);
      double within = y - number * plank;
      float gap = within < 1.2 ? 0.25f : 1;
      float own = 0.12f * planks.at(number * 3, number);
      float ring = 0.14f * rings.at(x * 0.06, y) + 0.1f * grain.at(x * 0.04, y);
      set(rgb, colour, (1 + own + ring) * gap);
    };
  }
}
