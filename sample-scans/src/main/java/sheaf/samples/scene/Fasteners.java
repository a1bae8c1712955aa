package sheaf.samples.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/** What holds a sheet: staples, and pins in its corners. */
public final class Fasteners {

  private static final double PIN = 3;

  private Fasteners() {}

  /** A staple: 11 mm of flat wire with a bright line along it and a shadow beside it. */
  public static void staple(Page page, MmPoint at, RandomGenerator random) {
    double angle = random.nextGaussian() * 0.35;
    double dx = 5.5 * Math.cos(angle);
    double dy = 5.5 * Math.sin(angle);
    Graphics2D g = page.pen(new Color(0, 0, 0, 70));
    wire(g, at.plus(new MmVector(0.3, 0.35)), dx, dy, 0.75);
    g.setColor(new Color(120, 122, 126));
    wire(g, at, dx, dy, 0.6);
    g.setColor(new Color(215, 217, 222));
    wire(g, at.plus(new MmVector(-0.08, -0.1)), dx, dy, 0.18);
    g.setColor(new Color(60, 60, 62));
    g.fill(new Ellipse2D.Double(at.x() - dx - 0.4, at.y() - dy - 0.4, 0.8, 0.8));
    g.fill(new Ellipse2D.Double(at.x() + dx - 0.4, at.y() + dy - 0.4, 0.8, 0.8));
    g.dispose();
  }

  private static void wire(Graphics2D g, MmPoint at, double dx, double dy, double width) {
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(new Line2D.Double(at.x() - dx, at.y() - dy, at.x() + dx, at.y() + dy));
  }

  /** The colour of somebody's box of pins. */
  static Color pinColour(RandomGenerator random) {
    List<Color> colours =
        List.of(new Color(200, 40, 35), new Color(40, 90, 180), new Color(225, 225, 228));
    return colours.get(random.nextInt(colours.size()));
  }

  /** The round head of a pin, with its shadow. */
  static void pin(Page page, MmPoint at, Color colour) {
    Graphics2D g = page.pen(new Color(0, 0, 0, 80));
    g.fill(new Ellipse2D.Double(at.x() - PIN + 0.9, at.y() - PIN + 1.1, 2 * PIN, 2 * PIN));
    g.setPaint(
        new RadialGradientPaint(
            new Point2D.Double(at.x() - 1, at.y() - 1),
            (float) (1.6 * PIN),
            new float[] {0, 0.25f, 1},
            new Color[] {Color.WHITE, colour, colour.darker().darker()}));
    g.fill(new Ellipse2D.Double(at.x() - PIN, at.y() - PIN, 2 * PIN, 2 * PIN));
    g.dispose();
  }
}
