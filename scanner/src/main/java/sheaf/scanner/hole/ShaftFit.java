package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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

  private final Closeup closeup;
  private final RimOdds odds;
  private final Opening middle;
  private final List<Look> coarse;

  /**
   * A rim seen from a centre.
   *
   * @param area that this centre stands for, in square pixels
   */
  private record Look(int x, int y, int area, RimProfile rim) {}

  /**
   * Where the axis is.
   *
   * @param x in pixels of the sheet: the mean of all that is likely
   * @param y the same, down
   * @param spread standard deviation in each direction, in pixels
   * @param odds log odds that this is a hole at all
   */
  record Axis(double x, double y, double spread, double odds) {}

  private ShaftFit(Closeup closeup, RimOdds odds, Opening middle, int reach) {
    this.closeup = closeup;
    this.odds = odds;
    this.middle = middle;
    this.coarse = new ArrayList<>();
    int x = (int) Math.round(middle.x());
    int y = (int) Math.round(middle.y());
    for (int dy = -reach; dy <= reach; dy += COARSE) {
      for (int dx = -reach; dx <= reach; dx += COARSE) {
        coarse.add(look(x + dx, y + dy, COARSE * COARSE));
      }
    }
  }

  /**
   * Looks around an opening.
   *
   * @param reach how far from its middle the axis may lie, in pixels
   */
  static ShaftFit around(Surface surface, Seeds.Kind kind, Opening opening, int reach) {
    double needed = reach + FINE_REACH + RimProfile.LAST + RimProfile.MARGIN;
    Closeup closeup = Closeup.of(surface, kind, opening.x(), opening.y(), needed);
    return new ShaftFit(closeup, RimOdds.of(kind), opening, reach);
  }

  private Look look(int x, int y, int area) {
    return new Look(x, y, area, RimProfile.around(closeup, x, y));
  }

  /** The coarse grid with a fine one around the likeliest place for radii in a range. */
  private List<Look> around(int least, int most) {
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

  private double likelihood(Look look, int radius) {
    return odds.where(look.rim, radius, off(look, radius));
  }

  private double off(Look look, int radius) {
    return Math.hypot(look.x - middle.x(), look.y - middle.y()) / (2 * radius);
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
      logs[i] =
          highest
              + Math.log(
                  IntStream.range(0, likelihoods.length)
                      .mapToDouble(k -> looks.get(k).area * Math.exp(likelihoods[k] - highest))
                      .sum());
    }
    return logs;
  }

  private double[] likelihoods(List<Look> looks, int radius) {
    return looks.stream().mapToDouble(look -> likelihood(look, radius)).toArray();
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
        odds.whether(best.rim, radius, off(best, radius), middle.share()));
  }
}
