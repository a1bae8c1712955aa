package sheaf.samples.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** What people write on a sheet with the pen at hand. */
public final class Writing {

  private static final List<Color> INKS =
      List.of(
          new Color(25, 40, 120),
          new Color(20, 20, 25),
          new Color(150, 25, 30),
          new Color(70, 70, 75));

  private final Page page;
  private final Color ink;
  private final double width;
  private final RandomGenerator random;

  /** Somebody with one pen. */
  public Writing(Page page, RandomGenerator random) {
    this.page = page;
    this.random = random;
    this.ink = INKS.get(random.nextInt(INKS.size()));
    this.width = random.nextDouble(0.3, 0.8);
  }

  /** Ticks a box: a cross, a check mark or a blob, sometimes reaching out of the box. */
  public void tick(MmRect box) {
    double side = box.width();
    double x = box.x() + random.nextGaussian() * 0.3;
    double y = box.y() + random.nextGaussian() * 0.3;
    double kind = random.nextDouble();
    if (kind < 0.45) {
      double out = random.nextDouble(-0.15, 0.12) * side;
      stroke(x - out, y - out, x + side + out, y + side + out);
      stroke(x + side + out, y - out, x - out, y + side + out);
    } else if (kind < 0.85) {
      stroke(x + 0.15 * side, y + 0.5 * side, x + 0.4 * side, y + 0.85 * side);
      double out = random.nextDouble(0, 0.3) * side;
      stroke(x + 0.4 * side, y + 0.85 * side, x + side * 0.9 + out, y + 0.1 * side - out);
    } else {
      for (int i = 0; i < 9; i++) {
        double at = y + side * (0.15 + 0.08 * i);
        stroke(x + 0.15 * side, at, x + 0.85 * side, at + random.nextGaussian() * 0.3);
      }
    }
  }

  /** Something like a word: crooked strokes in a row. */
  public void scribble(MmPoint start, int letters, double height) {
    double x = start.x();
    for (int i = 0; i < letters; i++) {
      int strokes = random.nextInt(2, 4);
      for (int s = 0; s < strokes; s++) {
        stroke(
            x + random.nextDouble(height * 0.6),
            start.y() + random.nextDouble(height),
            x + random.nextDouble(height * 0.6),
            start.y() + random.nextDouble(height));
      }
      x += height * random.nextDouble(0.7, 1);
    }
  }

  /** A dot where the pen rested. */
  public void dot(MmPoint at) {
    Graphics2D g = page.pen(ink);
    double size = random.nextDouble(0.6, 1.6);
    g.translate(at.x(), at.y());
    g.fill(new Ellipse2D.Double(-size / 2, -size / 2, size, size * 0.9));
    g.dispose();
  }

  private void stroke(double x1, double y1, double x2, double y2) {
    Graphics2D g = page.pen(ink);
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    Path2D line = new Path2D.Double();
    line.moveTo(x1, y1);
    double bendX = (x1 + x2) / 2 + random.nextGaussian() * 0.35;
    double bendY = (y1 + y2) / 2 + random.nextGaussian() * 0.35;
    line.quadTo(bendX, bendY, x2, y2);
    g.draw(line);
    g.dispose();
  }
}
