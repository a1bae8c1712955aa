package sheaf.samples.hole;

import java.util.random.RandomGenerator;
import sheaf.samples.raster.Clouds;
import sheaf.samples.raster.Plane;

/** How high the paper stands around a hole: dents, ridges, and the lips of tears and slits. */
final class Relief {

  /** How far from a cut the paper is still bent, in millimetres. */
  private static final double LIP_REACH = 0.55;

  private final Canvas canvas;
  private final TornHole hole;
  private final RandomGenerator random;
  private final Plane height;

  private Relief(Canvas canvas, TornHole hole, RandomGenerator random) {
    this.canvas = canvas;
    this.hole = hole;
    this.random = random;
    this.height = canvas.plane();
  }

  /** The paper's height in millimetres toward who looks at it. */
  static Plane of(Canvas canvas, TornHole hole, RandomGenerator random) {
    Relief relief = new Relief(canvas, hole, random);
    relief.crumple();
    hole.tears().forEach(tear -> relief.lips(tear, 0.5));
    hole.slits().forEach(slit -> relief.lips(slit, 1));
    return relief.height;
  }

  /** Paper gives around the hole, on some sides more than on others. */
  private void crumple() {
    double radius = hole.radius();
    Clouds wide = new Clouds(0.75 * radius, random);
    Clouds narrow = new Clouds(0.3 * radius, random);
    Clouds sides = new Clouds(0.9, random);
    double strength = radius * random.nextDouble(0.04, 0.11);
    double reach = radius * random.nextDouble(0.35, 0.7);
    double dish = radius * random.nextDouble(-0.05, 0.09);
    double most = radius + 2.2 * reach;
    int end = Math.min(canvas.row(most), height.height() - 1);
    for (int row = Math.max(0, canvas.row(-most)); row <= end; row++) {
      double y = canvas.y(row);
      int last = Math.min(canvas.column(most), height.width() - 1);
      for (int column = Math.max(0, canvas.column(-most)); column <= last; column++) {
        double x = canvas.x(column);
        double r = Math.hypot(x, y);
        double outside = Math.max(0, r - radius) / reach;
        double near = Math.exp(-outside * outside * 1.4);
        if (near > 0.002) {
          double side = Math.max(0.1, 0.5 + 0.9 * sides.at(x / (r + 0.1), y / (r + 0.1)));
          double bumps = wide.at(x, y) + 0.45 * narrow.at(x, y);
          double dent = -dish * Math.exp(-outside * 2.2);
          height.values()[row * height.width() + column] +=
              (float) (near * strength * side * bumps + dent);
        }
      }
    }
  }

  /** One side of a cut stands above the other, in ripples. */
  private void lips(Cut cut, double ripple) {
    Clouds ripples = new Clouds(1.1, random);
    double cos = Math.cos(cut.angle());
    double sin = Math.sin(cut.angle());
    double margin = 3 * LIP_REACH + 0.6;
    double[] xs = {cut.from() * cos, cut.to() * cos};
    double[] ys = {cut.from() * sin, cut.to() * sin};
    int firstRow = Math.max(0, canvas.row(Math.min(ys[0], ys[1]) - margin));
    int lastRow = Math.min(height.height() - 1, canvas.row(Math.max(ys[0], ys[1]) + margin));
    int firstColumn = Math.max(0, canvas.column(Math.min(xs[0], xs[1]) - margin));
    int lastColumn = Math.min(height.width() - 1, canvas.column(Math.max(xs[0], xs[1]) + margin));
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        double x = canvas.x(column);
        double y = canvas.y(row);
        double t = (x * cos + y * sin - cut.from()) / (cut.to() - cut.from());
        if (t > -0.05 && t < 1.05) {
          double within = Math.max(0, Math.min(1, t));
          double aside = y * cos - x * sin - Cut.at(cut.wander(), within);
          height.values()[row * height.width() + column] +=
              (float) lip(cut, within, aside, ripple * ripples.at(x, y));
        }
      }
    }
  }

  private static double lip(Cut cut, double t, double aside, double ripple) {
    double fade = Math.exp(-Math.abs(aside) / LIP_REACH) * Math.min(1, 4 * (1 - t));
    double step = aside > 0 ? cut.lip() : -0.6 * cut.lip();
    double bump = 0.09 * ripple * Math.exp(-Math.abs(aside) / (1.6 * LIP_REACH));
    return fade * step + bump * Math.min(1, 4 * (1 - t));
  }
}
