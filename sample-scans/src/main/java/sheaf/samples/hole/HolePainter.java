package sheaf.samples.hole;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.raster.Clouds;
import sheaf.samples.raster.Plane;

/** Paints torn holes: what is open, how the paper around is shaded, where shadow falls behind. */
public final class HolePainter {

  /** How much a slope of 1 changes the light that paper throws back. */
  private static final double RELIEF_GAIN = 0.55;

  private static final double DARKEST_SLOPE = 0.6;
  private static final double BRIGHTEST_SLOPE = 1.12;

  /** Width of torn fibre along an edge, as the deviation of a blur, in millimetres. */
  private static final double FIBRE = 0.07;

  /** Width of the crease along a fold, in millimetres. */
  private static final double CREASE = 0.13;

  private final TornHole hole;
  private final Canvas canvas;
  private final double light;
  private final RandomGenerator random;
  private final Rim rim;
  private final Clouds uneven;

  private HolePainter(TornHole hole, Canvas canvas, double light, RandomGenerator random) {
    this.hole = hole;
    this.canvas = canvas;
    this.light = light;
    this.random = random;
    this.rim = new Rim(hole);
    this.uneven = new Clouds(0.3 * hole.radius(), random);
  }

  /**
   * Paints a hole.
   *
   * @param pixelsPerMm of the page
   * @param offsetX of the axis from the middle of its pixel, in pixels, below 1
   * @param offsetY the same, down
   * @param light angle from which the light comes, in radians
   */
  public static HolePatch paint(
      TornHole hole,
      double pixelsPerMm,
      double offsetX,
      double offsetY,
      double light,
      RandomGenerator random) {
    Canvas canvas = new Canvas(hole, pixelsPerMm, offsetX, offsetY);
    return new HolePainter(hole, canvas, light, random).patch();
  }

  private HolePatch patch() {
    Plane open = canvas.drawn(this::openings);
    Plane shade = lit(Relief.of(canvas, hole, random));
    Plane bare = canvas.plane();
    folds(shade);
    edges(open, shade, bare);
    Plane behind = shadow(open);
    for (Flap flap : hole.flaps()) {
      if (flap.dragged() > 0) {
        new DraggedFlap(hole, flap, canvas, light, random).lay(open, shade, bare);
      }
    }
    return new HolePatch(
        canvas.left,
        canvas.top,
        canvas.width,
        canvas.height,
        canvas.reduced(open),
        canvas.reduced(shade),
        canvas.reduced(behind),
        canvas.reduced(bare));
  }

  private void openings(Graphics2D g) {
    for (Cut slit : hole.slits()) {
      cut(g, slit);
    }
    for (Cut tear : hole.tears()) {
      cut(g, tear);
    }
    g.setColor(Canvas.level(1));
    g.fill(Canvas.closed(hole.opening()));
  }

  private static void cut(Graphics2D g, Cut cut) {
    List<MmPoint> outline = new ArrayList<>();
    int steps = 3 * Cut.STEPS;
    for (int i = 0; i <= steps; i++) {
      double t = i / (double) steps;
      outline.add(cut.place(t, -cut.half(t)));
    }
    for (int i = steps; i >= 0; i--) {
      double t = i / (double) steps;
      outline.add(cut.place(t, cut.half(t)));
    }
    g.setColor(Canvas.level(1 - cut.closed()));
    g.fill(Canvas.closed(outline));
  }

  /** Slopes that face the light are bright, the others dark. */
  private Plane lit(Plane height) {
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

  /** Flaps that hang behind: darker or brighter than the sheet, with a crease at the fold. */
  private void folds(Plane shade) {
    double most = 1.1 * hole.radius();
    double creases = random.nextDouble(0.0, 0.3);
    for (int row = canvas.row(-most); row <= canvas.row(most); row++) {
      for (int column = canvas.column(-most); column <= canvas.column(most); column++) {
        double x = canvas.x(column);
        double y = canvas.y(row);
        int bin = Rim.bin(x, y);
        double in = rim.fold(bin) - Math.hypot(x, y);
        if (in > -2 * CREASE && rim.flap(bin).dragged() == 0) {
          int i = row * shade.width() + column;
          shade.values()[i] *= (float) (hanging(bin, in) * creased(creases, in, x, y));
        }
      }
    }
  }

  private double hanging(int bin, double in) {
    Flap flap = rim.flap(bin);
    double length = Math.max(0.2, rim.fold(bin) - rim.edge(bin));
    double share = Math.max(0, Math.min(1, in / length));
    double facing = Math.cos(flap.angle(0.5) - light);
    double tone = -0.02 - 0.24 * flap.slope() * flap.slope() - 0.09 * facing;
    return 1 + Math.max(-0.4, Math.min(0.05, tone)) * (0.35 + 0.65 * share);
  }

  private double creased(double strength, double in, double x, double y) {
    double near = in / CREASE;
    double dark = Math.exp(-near * near) * strength * Math.max(0, 0.35 + 1.2 * uneven.at(x, y));
    double ridge = (in + 1.8 * CREASE) / CREASE;
    return 1 - dark + 0.25 * strength * Math.exp(-ridge * ridge);
  }

  /** Torn edges: fibre that catches the light on one side and is dark on the other. */
  private void edges(Plane open, Plane shade, Plane bare) {
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
  private Plane shadow(Plane open) {
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
}
