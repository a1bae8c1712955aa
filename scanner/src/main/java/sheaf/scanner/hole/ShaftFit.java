package sheaf.scanner.hole;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
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

  private static final int FINE_SIDE = 2 * FINE_REACH / FINE + 1;

  /** A place is not worth a look when its log likelihood is less than the highest by this. */
  private static final double HOPELESS = 10;

  /** The same of a radius: no other hole makes up for that. */
  private static final double HOPELESS_RADIUS = 20;

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
    List<Look> near = new ArrayList<>();
    for (Look look : coarse) {
      boolean covered =
          Math.max(Math.abs(look.x - best.x), Math.abs(look.y - best.y)) <= FINE_REACH;
      (covered ? near : looks).add(look);
    }
    looks.addAll(new FineGrid(best, least, most).spreadFrom(near));
    return looks;
  }

  /**
   * A fine grid, of which only what is likely is looked at: it spreads out from the likely coarse
   * places for as long as a place is likely for some radius.
   */
  private final class FineGrid {

    private final Look middle;
    private final int least;
    private final double[] highest;
    private final boolean[] known = new boolean[FINE_SIDE * FINE_SIDE];
    private final Deque<Look> open = new ArrayDeque<>();
    private final List<Look> looks = new ArrayList<>();

    FineGrid(Look middle, int least, int most) {
      this.middle = middle;
      this.least = least;
      this.highest = new double[most - least + 1];
      Arrays.fill(highest, Double.NEGATIVE_INFINITY);
    }

    List<Look> spreadFrom(List<Look> near) {
      near.forEach(this::raise);
      near.stream().filter(this::isLikely).forEach(look -> add(column(look), row(look)));
      while (!open.isEmpty()) {
        Look look = open.remove();
        if (isLikely(look)) {
          for (int down = -1; down <= 1; down++) {
            for (int right = -1; right <= 1; right++) {
              add(column(look) + right, row(look) + down);
            }
          }
        }
      }
      return looks;
    }

    private int column(Look look) {
      return (look.x - middle.x) / FINE;
    }

    private int row(Look look) {
      return (look.y - middle.y) / FINE;
    }

    private void raise(Look look) {
      for (int i = 0; i < highest.length; i++) {
        highest[i] = Math.max(highest[i], likelihood(look, least + i));
      }
    }

    private boolean isLikely(Look look) {
      double best = highest[highest(highest)];
      for (int i = 0; i < highest.length; i++) {
        if (highest[i] > best - HOPELESS_RADIUS
            && likelihood(look, least + i) > highest[i] - HOPELESS) {
          return true;
        }
      }
      return false;
    }

    private void add(int column, int row) {
      int half = FINE_SIDE / 2;
      if (Math.abs(column) <= half && Math.abs(row) <= half) {
        int index = (row + half) * FINE_SIDE + column + half;
        if (!known[index]) {
          known[index] = true;
          Look look = look(middle.x + column * FINE, middle.y + row * FINE, FINE * FINE);
          raise(look);
          looks.add(look);
          open.add(look);
        }
      }
    }
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

  /** Log odds that this is a hole at all, as far as the coarse grid tells. */
  double roughOdds() {
    Look best = likeliest(RimViews.LEAST_RADIUS, RimViews.MOST_RADIUS);
    double[] likelihoods = new double[best.where.length];
    for (int i = 0; i < likelihoods.length; i++) {
      likelihoods[i] = likelihood(best, RimViews.LEAST_RADIUS + i);
    }
    return whether(best, RimViews.LEAST_RADIUS + highest(likelihoods));
  }

  private double whether(Look look, int radius) {
    RimProfile rim = views.rim(look.x, look.y);
    return views.odds().whether(rim, radius, off(look, radius), middle.share());
  }

  /** Where the axis is for a shaft of a radius, as its rim tells. */
  Axis axis(int radius) {
    return axis(radius, List.of());
  }

  /** The same, as its rim and the slits of its blades tell together. */
  Axis axis(int radius, List<Heading> slits) {
    List<Look> looks = around(radius, radius);
    double[] likelihoods = likelihoods(looks, radius);
    for (int k = 0; k < likelihoods.length; k++) {
      for (Heading slit : slits) {
        likelihoods[k] += slit.axisAt(looks.get(k).x, looks.get(k).y);
      }
    }
    int likeliest = highest(likelihoods);
    Look best = looks.get(likeliest);
    double highest = likelihoods[likeliest];
    MeanPlace mean = new MeanPlace();
    for (int k = 0; k < likelihoods.length; k++) {
      Look look = looks.get(k);
      double weight = look.area * Math.exp(likelihoods[k] - highest);
      mean.add(weight, look.x - middle.x(), look.y - middle.y());
    }
    return new Axis(
        middle.x() + mean.x(), middle.y() + mean.y(), mean.spread(), whether(best, radius));
  }
}
