package sheaf.samples.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.raster.Plane;

/** A flap that the shaft drew back out: it lies on the paper's front and shows its own back. */
final class DraggedFlap {

  private final TornHole hole;
  private final Flap flap;
  private final PaperLight torn;
  private final RandomGenerator random;

  DraggedFlap(TornHole hole, Flap flap, PaperLight torn, RandomGenerator random) {
    this.hole = hole;
    this.flap = flap;
    this.torn = torn;
    this.random = random;
  }

  /** Lays it over what is painted already. */
  void lay(Plane open, Plane shade, Plane bare) {
    List<MmPoint> outline = outline();
    torn.lay(outline, (x, y) -> Math.hypot(x, y) / hole.radius() - 1, open, shade, bare);
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
