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
    PaperLight torn = new PaperLight(canvas, light, random);
    Plane shade = torn.lit(Relief.of(canvas, hole, random));
    Plane bare = canvas.plane();
    folds(shade);
    torn.edges(open, shade, bare);
    Plane behind = torn.shadow(open);
    for (Flap flap : hole.flaps()) {
      if (flap.dragged() > 0) {
        new DraggedFlap(hole, flap, torn, random).lay(open, shade, bare);
      }
    }
    return canvas.patch(open, shade, behind, bare);
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
}
