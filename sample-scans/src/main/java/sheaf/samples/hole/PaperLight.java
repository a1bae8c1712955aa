package sheaf.samples.hole;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.raster.Clouds;
import sheaf.samples.raster.Plane;

/** Light on torn paper: its relief, its torn edges, its shadow, and what lies on its front. */
public final class PaperLight {

  /** How much a slope of 1 changes the light that paper throws back. */
  private static final double RELIEF_GAIN = 0.55;

  private static final double DARKEST_SLOPE = 0.6;
  private static final double BRIGHTEST_SLOPE = 1.12;

  /** Width of torn fibre along an edge, as the deviation of a blur, in millimetres. */
  private static final double FIBRE = 0.07;

  /** How far the shadow of what lies on the paper's front reaches, in millimetres. */
  private static final double SHADOW = 0.35;

  private final Canvas canvas;
  private final double light;
  private final RandomGenerator random;

  /**
   * Light on a canvas.
   *
   * @param light angle from which the light comes, in radians
   */
  public PaperLight(Canvas canvas, double light, RandomGenerator random) {
    this.canvas = canvas;
    this.light = light;
    this.random = random;
  }

  /** Slopes that face the light are bright, the others dark. */
  public Plane lit(Plane height) {
    Plane shade = canvas.plane();
    double cos = Math.cos(light);
    double sin = Math.sin(light);
    double gain = RELIEF_GAIN * canvas.perMm / 2;
    for (int y = 0; y < shade.height(); y++) {
      for (int x = 0; x < shade.width(); x++) {
        double across = height.at(x + 1, y) - height.at(x - 1, y);
        double down = height.at(x, y + 1) - height.at(x, y - 1);
        // The light comes from (cos, sin): ground that falls that way faces it.
        double tone = 1 - gain * (across * cos + down * sin);
        shade.values()[y * shade.width() + x] =
            (float) Math.max(DARKEST_SLOPE, Math.min(BRIGHTEST_SLOPE, tone));
      }
    }
    return shade;
  }

  /** Torn edges: fibre that catches the light on one side and is dark on the other. */
  public void edges(Plane open, Plane shade, Plane bare) {
    Plane near = open.blurred(FIBRE * canvas.perMm);
    Clouds tufts = new Clouds(0.5, random);
    double cos = Math.cos(light) * FIBRE * canvas.perMm;
    double sin = Math.sin(light) * FIBRE * canvas.perMm;
    double relief = random.nextDouble(0.15, 0.5);
    double contact = random.nextDouble(0.05, 0.35);
    for (int y = 0; y < near.height(); y++) {
      for (int x = 0; x < near.width(); x++) {
        int i = y * near.width() + x;
        float amount = near.values()[i];
        if (amount > 0.01f) {
          double facing =
              cos * (near.at(x + 1, y) - near.at(x - 1, y))
                  + sin * (near.at(x, y + 1) - near.at(x, y - 1));
          double tuft = tufts.at(canvas.x(x), canvas.y(y));
          double tone = 1 + relief * facing - contact * amount * (0.6 + 0.8 * tuft);
          shade.values()[i] *= (float) Math.max(0.45, Math.min(1.15, tone));
          bare.values()[i] = (float) Math.max(0, Math.min(1, amount * (1.1 + 2.2 * tuft)));
        }
      }
    }
  }

  /** The paper keeps light off what lies behind: close to every edge, and more on one side. */
  public Plane shadow(Plane open) {
    double depth = random.nextDouble(0.25, 1.0);
    double aside = random.nextDouble(0.08, 0.3);
    double around = random.nextDouble(0.04, 0.16);
    Plane cast = open.blurred(0.35 * depth * canvas.perMm);
    Plane ambient = open.blurred(0.6 * canvas.perMm);
    int dx = (int) Math.round(depth * Math.cos(light) * canvas.perMm);
    int dy = (int) Math.round(depth * Math.sin(light) * canvas.perMm);
    Plane behind = canvas.plane();
    for (int y = 0; y < behind.height(); y++) {
      for (int x = 0; x < behind.width(); x++) {
        float lightPath = cast.at(x + dx, y + dy);
        float sky = ambient.at(x, y);
        behind.values()[y * behind.width() + x] =
            (float) (1 - aside * (1 - lightPath) - around * (1 - sky));
      }
    }
    return behind;
  }

  /**
   * Lays torn paper that shows its back over what is painted already.
   *
   * @param outline of it
   * @param out how far outward from its fold a place is, about 0 to 1
   */
  public void lay(
      List<MmPoint> outline, DoubleBinaryOperator out, Plane open, Plane shade, Plane bare) {
    Plane paper =
        canvas.drawn(
            g -> {
              g.setColor(Canvas.level(1));
              g.fill(Canvas.closed(outline));
            });
    Plane shadow = paper.blurred(SHADOW * 0.6 * canvas.perMm);
    Plane edge = paper.blurred(0.06 * canvas.perMm);
    Clouds uneven = new Clouds(0.5, random);
    int dx = (int) Math.round(SHADOW * Math.cos(light) * canvas.perMm);
    int dy = (int) Math.round(SHADOW * Math.sin(light) * canvas.perMm);
    double dark = random.nextDouble(0.15, 0.45);
    double tone = random.nextDouble(0.9, 1.0);
    double curl = random.nextDouble(-0.1, 0.1);
    for (int y = 0; y < paper.height(); y++) {
      for (int x = 0; x < paper.width(); x++) {
        int i = y * paper.width() + x;
        float cover = paper.values()[i];
        double cast = 1 - dark * shadow.at(x + dx, y + dy);
        double outward = out.applyAsDouble(canvas.x(x), canvas.y(y));
        double rim = 1 - 0.35 * Math.max(0, 1 - Math.abs(2 * edge.values()[i] - 1.15));
        double own = (tone + curl * outward + 0.04 * uneven.at(canvas.x(x), canvas.y(y))) * rim;
        shade.values()[i] = (float) (shade.values()[i] * cast * (1 - cover) + own * cover);
        bare.values()[i] = Math.max(bare.values()[i], cover);
        open.values()[i] *= 1 - cover;
      }
    }
  }
}
