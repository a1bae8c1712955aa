package sheaf.samples.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** What people write on a sheet with the pen at hand. */
final class Writing {

  private static final List<Color> INKS =
      List.of(
          new Color(25, 40, 120),
          new Color(20, 20, 25),
          new Color(150, 25, 30),
          new Color(70, 70, 75));

  private static final List<String> WORDS =
      List.of("20yd", "3R", "+4", "2-1", "R2", "to 5", "1/2L", "x9", "594", "15R", "-3", "oL8");

  /** A pen's line is drawn in steps of this, in millimetres. */
  private static final double STEP = 0.35;

  private final Page page;
  private final Color ink;
  private final double width;
  private final RandomGenerator random;

  /** Somebody with one pen. */
  Writing(Page page, RandomGenerator random) {
    this.page = page;
    this.random = random;
    Color base = INKS.get(random.nextInt(INKS.size()));
    int paler = random.nextInt(0, 40);
    this.ink = new Color(base.getRed() + paler, base.getGreen() + paler, base.getBlue() + paler);
    this.width = random.nextDouble(0.3, 0.8);
  }

  /** Ticks a box: a cross, a check mark or a blob, sometimes reaching out of the box. */
  void tick(MmRect box) {
    double side = box.width();
    double x = box.x() + random.nextGaussian() * 0.3;
    double y = box.y() + random.nextGaussian() * 0.3;
    double kind = random.nextDouble();
    if (kind < 0.45) {
      double out = random.nextDouble(-0.15, 0.15) * side;
      line(x - out, y - out, x + side + out, y + side + out);
      line(x + side + out, y - out, x - out, y + side + out);
    } else if (kind < 0.85) {
      double out = random.nextDouble(0, 0.35) * side;
      stroke(
          List.of(
              new MmPoint(x + 0.15 * side, y + 0.5 * side),
              new MmPoint(x + 0.4 * side, y + 0.85 * side),
              new MmPoint(x + side * 0.9 + out, y + 0.1 * side - out)));
    } else {
      List<MmPoint> fill = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        double at = i % 2 == 0 ? random.nextDouble(0.1, 0.3) : random.nextDouble(0.7, 0.92);
        fill.add(new MmPoint(x + at * side, y + side * (0.12 + 0.08 * i)));
      }
      stroke(fill);
    }
  }

  /** A short note, mostly a little askew. */
  void note(MmPoint start) {
    String word = WORDS.get(random.nextInt(WORDS.size()));
    double height = random.nextDouble(4, 8);
    double turn = random.nextGaussian() * 0.12;
    double x = 0;
    for (char c : word.toCharArray()) {
      for (List<double[]> shape : Strokes.of(c)) {
        List<MmPoint> points = new ArrayList<>();
        for (double[] at : shape) {
          double px = x + at[0] * height + random.nextGaussian() * 0.05 * height;
          double py = at[1] * height + random.nextGaussian() * 0.04 * height;
          points.add(
              new MmPoint(
                  start.x() + px * Math.cos(turn) - py * Math.sin(turn),
                  start.y() + px * Math.sin(turn) + py * Math.cos(turn)));
        }
        stroke(points);
      }
      x += height * random.nextDouble(0.75, 0.95);
    }
  }

  /** A dot where the pen rested. */
  void dot(MmPoint at) {
    Graphics2D g = page.pen(ink);
    double size = random.nextDouble(0.6, 1.6);
    g.translate(at.x(), at.y());
    g.fill(new Ellipse2D.Double(-size / 2, -size / 2, size, size * random.nextDouble(0.7, 1)));
    g.dispose();
  }

  /** A ring drawn around a place. */
  void ring(MmPoint around) {
    double radius = random.nextDouble(8, 13);
    double start = random.nextDouble(2 * Math.PI);
    double turns = random.nextDouble(0.93, 1.15);
    List<MmPoint> ring = new ArrayList<>();
    for (int i = 0; i <= 14; i++) {
      double angle = start + turns * 2 * Math.PI * i / 14;
      double out = radius * (1 + random.nextGaussian() * 0.02 + 0.006 * i);
      ring.add(new MmPoint(around.x() + out * Math.cos(angle), around.y() + out * Math.sin(angle)));
    }
    stroke(ring);
  }

  /** A line drawn through a place. */
  void strike(MmPoint through) {
    double angle = random.nextDouble(2 * Math.PI);
    double back = random.nextDouble(4, 30);
    double on = random.nextDouble(4, 30);
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    double x = through.x() + random.nextGaussian();
    double y = through.y() + random.nextGaussian();
    line(x - back * dx, y - back * dy, x + on * dx, y + on * dy);
  }

  private void line(double x1, double y1, double x2, double y2) {
    double bendX = (x1 + x2) / 2 + random.nextGaussian() * 0.3;
    double bendY = (y1 + y2) / 2 + random.nextGaussian() * 0.3;
    stroke(List.of(new MmPoint(x1, y1), new MmPoint(bendX, bendY), new MmPoint(x2, y2)));
  }

  /** One stroke of the pen through some places: it trembles, and presses now more, now less. */
  private void stroke(List<MmPoint> places) {
    Graphics2D g = page.pen(ink);
    double pressure = 1;
    double tremble = 0;
    MmPoint last = places.get(0);
    for (int i = 0; i + 1 < places.size(); i++) {
      double length = places.get(i).distanceTo(places.get(i + 1));
      int steps = Math.max(1, (int) (length / STEP));
      for (int s = 1; s <= steps; s++) {
        tremble = 0.8 * tremble + random.nextGaussian() * 0.03;
        pressure = 1 + 0.85 * (pressure - 1) + random.nextGaussian() * 0.06;
        MmPoint at = curve(places, i, s / (double) steps, tremble);
        float thick = (float) (width * Math.max(0.5, Math.min(1.4, pressure)));
        g.setStroke(new BasicStroke(thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(last.x(), last.y(), at.x(), at.y()));
        last = at;
      }
    }
    g.dispose();
  }

  /** A smooth curve through the places (Catmull and Rom's spline, half as taut). */
  private static MmPoint curve(List<MmPoint> places, int i, double t, double aside) {
    MmPoint a = places.get(Math.max(0, i - 1));
    MmPoint b = places.get(i);
    MmPoint c = places.get(i + 1);
    MmPoint d = places.get(Math.min(places.size() - 1, i + 2));
    double x = spline(a.x(), b.x(), c.x(), d.x(), t);
    double y = spline(a.y(), b.y(), c.y(), d.y(), t);
    return new MmPoint(x + aside, y - aside);
  }

  private static double spline(double a, double b, double c, double d, double t) {
    double slopeB = (c - a) * 0.35;
    double slopeC = (d - b) * 0.35;
    double t2 = t * t;
    double t3 = t2 * t;
    return b * (2 * t3 - 3 * t2 + 1)
        + slopeB * (t3 - 2 * t2 + t)
        + c * (3 * t2 - 2 * t3)
        + slopeC * (t3 - t2);
  }
}
