package sheaf.samples.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.raster.Clouds;
import sheaf.samples.raster.Plane;

/** A flap that the shaft drew back out: it lies on the paper's front and shows its own back. */
final class DraggedFlap {

  /** How far its shadow reaches on the paper, in millimetres. */
  private static final double SHADOW = 0.35;

  private final TornHole hole;
  private final Flap flap;
  private final Canvas canvas;
  private final double light;
  private final RandomGenerator random;

  DraggedFlap(TornHole hole, Flap flap, Canvas canvas, double light, RandomGenerator random) {
    this.hole = hole;
    this.flap = flap;
    this.canvas = canvas;
    this.light = light;
    this.random = random;
  }

  /** Lays it over what is painted already. */
  void lay(Plane open, Plane shade, Plane bare) {
    List<MmPoint> outline = outline();
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
        double out = Math.hypot(canvas.x(x), canvas.y(y)) / hole.radius() - 1;
        double rim = 1 - 0.35 * Math.max(0, 1 - Math.abs(2 * edge.values()[i] - 1.15));
        double own = (tone + curl * out + 0.04 * uneven.at(canvas.x(x), canvas.y(y))) * rim;
        shade.values()[i] = (float) (shade.values()[i] * cast * (1 - cover) + own * cover);
        bare.values()[i] = Math.max(bare.values()[i], cover);
        open.values()[i] *= 1 - cover;
      }
    }
  }

  /** From its fold outward, narrower toward its ragged tip. */
  private List<MmPoint> outline() {
    List<MmPoint> outline = new ArrayList<>();
    int steps = Flap.STEPS;
    for (int i = 0; i <= steps; i++) {
      double angle = flap.angle(i / (double) steps);
      outline.add(TornHole.polar(angle, hole.radius() * flap.fold(i)));
    }
    double lean = random.nextDouble(-0.15, 0.15);
    for (int i = steps; i >= 0; i--) {
      double t = i / (double) steps;
      double rise = Math.pow(Math.sin(Math.PI * t), 0.7) * flap.dragged();
      double angle = flap.angle(0.5 + (t - 0.5) * 0.85 + lean * rise);
      double out = 1 + flap.fold()[i] + rise + 1.5 * flap.rag()[i] * Math.min(1, 3 * rise);
      outline.add(TornHole.polar(angle, hole.radius() * out));
    }
    return outline;
  }
}
