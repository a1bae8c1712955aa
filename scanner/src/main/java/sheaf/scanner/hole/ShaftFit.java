package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a shaft's axis lies, as the rim around an opening tells: every place near its middle is
 * tried, first on a coarse grid, then on a fine one around the likeliest.
 */
final class ShaftFit {

  /** Distance between the places tried, in pixels. */
  private static final int COARSE = 5;

  private static final int FINE = 2;

  /** The fine grid reaches so far from its middle, in pixels, a multiple of {@link #FINE}. */
  private static final int FINE_REACH = 10;

  /** Places tried may lie so much farther from an opening's middle than the axis, in pixels. */
  static final int BEYOND = FINE_REACH + COARSE / 2 + 1;

  private final RimViews views;
  private final Opening middle;
  private final List<Look> coarse;

  /**
   * A rim seen from a centre.
   *
   * @param area that this centre stands for, in square pixels
   * @param way from the opening's middle, in pixels
   * @param where log of how likely the axis is here for each radius, but for the way
   */
  private record Look(int x, int y, int area, double way, float[] where) {}

  /**
   * Where the axis is.
   *
   * @param x in pixels of the sheet: the mean of all that is likely
   * @param y the same, down
   * @param spread standard deviation in each direction, in pixels
   * @param odds log odds that this is a hole at all
   */
  record Axis(double x, double y, double spread, double odds) {}

  /**
   * Looks around an opening.
   *
   * @param views that reach {@link #BEYOND} farther than the axis may lie
   * @param reach how far from the opening's middle the axis may lie, in pixels
   */
  ShaftFit(RimViews views, Opening middle, int reach) {
    this.views = views;
    this.middle = middle;
    this.coarse = new ArrayList<>();
    int x = onGrid(middle.x(), views.x());
    int y = onGrid(middle.y(), views.y());
    for (int dy = -reach; dy <= reach; dy += COARSE) {
      for (int dx = -reach; dx <= reach; dx += COARSE) {
        coarse.add(look(x + dx, y + dy, COARSE * COARSE));
      }
    }
  }

  /** One grid serves all openings here, so that a second search finds the views of the first. */
  private static int onGrid(double place, int origin) {
    return origin + COARSE * (int) Math.round((place - origin) / COARSE);
  }

  private Look look(int x, int y, int area) {
    double dx = x - middle.x();
    double dy = y - middle.y();
    return new Look(x, y, area, Math.sqrt(dx * dx + dy * dy), views.where(x, y));
  }

  /** The coarse grid with a fine one around the likeliest place for radii in a range. */
  private List<Look> around(int least, int most) {
    Look best = likeliest(least, most);
    List<Look> looks = new ArrayList<>();
    for (Look look : coarse) {
      if (Math.max(Math.abs(look.x - best.x), Math.abs(look.y - best.y)) > FINE_REACH) {
        looks.add(look);
      }
    }
    for (int dy = -FINE_REACH; dy <= FINE_REACH; dy += FINE) {
      for (int dx = -FINE_REACH; dx <= FINE_REACH; dx += FINE) {
        looks.add(look(best.x + dx, best.y + dy, FINE * FINE));
      }
    }
    return looks;
  }

  private Look likeliest(int least, int most) {
    Look best = coarse.get(0);
    double highest = Double.NEGATIVE_INFINITY;
    for (Look look : coarse) {
      for (int radius = least; radius <= most; radius++) {
        double likelihood = likelihood(look, radius);
        if (likelihood > highest) {
          highest = likelihood;
          best = look;
        }
      }
    }
    return best;
  }

  private double likelihood(Look look, int radius) {
    return look.where[radius - RimViews.LEAST_RADIUS] + views.odds().off(off(look, radius));
  }

  private static double off(Look look, int radius) {
    return look.way / (2 * radius);
  }

  /**
   * Log of how likely each radius is, up to a constant.
   *
   * @param least the first radius, in pixels
   * @param most the last radius, in pixels
   */
  double[] radii(int least, int most) {
    List<Look> looks = around(least, most);
    double[] logs = new double[most - least + 1];
    for (int i = 0; i < logs.length; i++) {
      double[] likelihoods = likelihoods(looks, least + i);
      double highest = likelihoods[highest(likelihoods)];
      double sum = 0;
      for (int k = 0; k < likelihoods.length; k++) {
        sum += looks.get(k).area * Math.exp(likelihoods[k] - highest);
      }
      logs[i] = highest + Math.log(sum);
    }
    return logs;
  }

  private double[] likelihoods(List<Look> looks, int radius) {
    double[] likelihoods = new double[looks.size()];
    for (int i = 0; i < likelihoods.length; i++) {
      likelihoods[i] = likelihood(looks.get(i), radius);
    }
    return likelihoods;
  }

  /** Index of the first of the highest values. */
  static int highest(double[] values) {
    int highest = 0;
    for (int i = 1; i < values.length; i++) {
      if (values[i] > values[highest]) {
        highest = i;
      }
    }
    return highest;
  }

  /** Where the axis is for a shaft of a radius. */
  Axis axis(int radius) {
    List<Look> looks = around(radius, radius);
    double[] likelihoods = likelihoods(looks, radius);
    int likeliest = highest(likelihoods);
    Look best = looks.get(likeliest);
    double highest = likelihoods[likeliest];
    double all = 0;
    double sumX = 0;
    double sumY = 0;
    double squares = 0;
    for (int k = 0; k < likelihoods.length; k++) {
      Look look = looks.get(k);
      double weight = look.area * Math.exp(likelihoods[k] - highest);
      double dx = look.x - middle.x();
      double dy = look.y - middle.y();
      all += weight;
      sumX += weight * dx;
      sumY += weight * dy;
      squares += weight * (dx * dx + dy * dy);
    }
    double x = sumX / all;
    double y = sumY / all;
    double variance = squares / all - x * x - y * y;
    return new Axis(
        middle.x() + x,
        middle.y() + y,
        Math.sqrt(Math.max(0, variance) / 2),
        views.odds().whether(views.rim(best.x, best.y), radius, off(best, radius), middle.share()));
  }
}
