package sheaf.samples.damage;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** What happens to a printed square on a sheet. */
enum Harm {
  /** An arrow went through it: a ragged opening a little wider than a shaft. */
  SHOT {
    @Override
    void apply(Graphics2D g, MmRect square, MmRect page, RandomGenerator random) {
      g.setColor(BEHIND);
      g.fill(ragged(square.centre(), 4.5, 0.25, random));
    }
  },
  /** It is torn out and what lies behind shows. */
  TORN {
    @Override
    void apply(Graphics2D g, MmRect square, MmRect page, RandomGenerator random) {
      g.setColor(BEHIND);
      g.fill(ragged(square.centre(), 0.6 * square.width(), 0.35, random));
    }
  },
  /** A felt pen was scribbled over it. */
  INKED {
    @Override
    void apply(Graphics2D g, MmRect square, MmRect page, RandomGenerator random) {
      g.setColor(FELT);
      g.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      Path2D scribble = new Path2D.Double();
      scribble.moveTo(square.x(), square.y());
      for (double y = square.y(); y < square.bottom(); y += 1.6) {
        scribble.lineTo(square.right() + random.nextDouble(-1, 1), y);
        scribble.lineTo(square.x() + random.nextDouble(-1, 1), y + 0.8);
      }
      g.draw(scribble);
    }
  },
  /** The paper was cut off there, from the edge inwards to the middle of it. */
  CUT_OFF {
    @Override
    void apply(Graphics2D g, MmRect square, MmRect page, RandomGenerator random) {
      g.setColor(BEHIND);
      MmPoint middle = square.centre();
      double left = middle.x() - page.x();
      double right = page.right() - middle.x();
      double top = middle.y() - page.y();
      double bottom = page.bottom() - middle.y();
      double least = Math.min(Math.min(left, right), Math.min(top, bottom));
      double half = square.width() / 2 + 1;
      Rectangle2D notch =
          new Rectangle2D.Double(square.x() - 1, square.y() - 1, 2 * half, 2 * half);
      if (least == left) {
        notch.setRect(-2, square.y() - 1, middle.x() + 2, 2 * half);
      } else if (least == right) {
        notch.setRect(middle.x(), square.y() - 1, right + 2, 2 * half);
      } else if (least == top) {
        notch.setRect(square.x() - 1, -2, 2 * half, middle.y() + 2);
      } else {
        notch.setRect(square.x() - 1, middle.y(), 2 * half, bottom + 2);
      }
      g.fill(notch);
    }
  };

  /** About the backing's colour in a scan. */
  static final Color BEHIND = new Color(225, 0, 124);

  private static final Color FELT = new Color(25, 25, 60);

  /** Does it, in millimetres of the page. */
  abstract void apply(Graphics2D g, MmRect square, MmRect page, RandomGenerator random);

  /** A round shape with an uneven edge. */
  private static Path2D ragged(
      MmPoint centre, double radius, double uneven, RandomGenerator random) {
    Path2D path = new Path2D.Double();
    int points = 24;
    for (int i = 0; i < points; i++) {
      double angle = 2 * Math.PI * i / points;
      double reach = radius * (1 + random.nextDouble(-uneven, uneven));
      double x = centre.x() + reach * Math.cos(angle);
      double y = centre.y() + reach * Math.sin(angle);
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    path.closePath();
    return path;
  }
}
