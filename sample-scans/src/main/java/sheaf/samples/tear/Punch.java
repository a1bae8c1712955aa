package sheaf.samples.tear;

import java.awt.geom.Ellipse2D;
import sheaf.core.page.MmPoint;
import sheaf.samples.hole.Canvas;
import sheaf.samples.hole.HolePatch;
import sheaf.samples.raster.Plane;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/** An office punch: clean round holes of 6 mm (ISO 838). */
final class Punch {

  private static final double DIAMETER = 6;
  private static final double AROUND = 1;

  private Punch() {}

  /** Punches a hole. */
  static void through(Page page, MmPoint centre, Backdrop backdrop) {
    page.tear(Punch::hole, centre, 1, backdrop);
  }

  private static HolePatch hole(double pixelsPerMm, double right, double down) {
    double half = DIAMETER / 2 + AROUND;
    Canvas canvas = new Canvas(new double[] {-half, -half, half, half}, pixelsPerMm, right, down);
    Plane open =
        canvas.drawn(
            g -> {
              g.setColor(Canvas.level(1));
              g.fill(new Ellipse2D.Double(-DIAMETER / 2, -DIAMETER / 2, DIAMETER, DIAMETER));
            });
    Plane shade = canvas.plane();
    Plane behind = open.blurred(0.3 * canvas.perMm());
    for (int i = 0; i < shade.values().length; i++) {
      shade.values()[i] = 1;
      behind.values()[i] = 0.8f + 0.2f * behind.values()[i];
    }
    return canvas.patch(open, shade, behind, canvas.plane());
  }
}
