package sheaf.scanner.sheet;

import java.util.Arrays;
import java.util.List;
import org.opencv.core.Point;

/**
 * Fits a curled page to what is seen of it: least squares that outliers hardly move, with what is
 * known beforehand of cameras and of paper (Levenberg and Marquardt's method; weights after
 * Cauchy).
 */
final class CurlFit {

  private static final int STEPS = 30;

  /** A step that betters the fit by less than this share ends it. */
  private static final double DONE = 1e-3;

  /** How exactly something printed is seen at best, in pixels. */
  private static final double EXACT = 0.4;

  /** Deviations beyond this many times the usual one count less and less. */
  private static final double TOLERANT = 2.5;

  /** Phones differ in focal length by this share, and people zoom. */
  private static final double FOCAL_SPREAD = 0.3;

  /** Lenses after the phone's own correction. */
  private static final double LENS_SPREAD = 0.015;

  /** Printers stretch one way by a few tenths of a percent. */
  private static final double STRETCH_SPREAD = 0.003;

  /** Paper stands up by this much in the simplest shapes, in millimetres, and by ever less. */
  private static final double[] HEIGHT_SPREAD = {0, 0, 8, 4, 2.5, 1.5, 1};

  /**
   * Gaussian curvature that paper shows, creased and damp, per square millimetre; a sheet curled
   * two ways by 5 mm each would have three times as much.
   */
  private static final double CURVATURE_SPREAD = 3e-7;

  /** Places across and down the sheet where its curvature is looked at. */
  private static final int CURVATURES = 5;

  private static final double SMALL = 1e-5;

  private final CurledPage start;
  private final List<Sighting> sightings;
  private final List<PaperCurl.Place> places;
  private final double[] usual;
  private final double[] spread = new double[CurledPage.NUMBERS];

  private CurlFit(CurledPage start, double usualFocal, List<Sighting> sightings) {
    this.start = start;
    this.sightings = sightings;
    this.places = sightings.stream().map(s -> start.paper().at(s.place())).toList();
    this.usual = new double[CurledPage.NUMBERS];
    usual[CurledPage.FOCAL] = Math.log(usualFocal);
    spread[CurledPage.FOCAL] = FOCAL_SPREAD;
    spread[CurledPage.LENS] = LENS_SPREAD;
    spread[CurledPage.LENS + 1] = LENS_SPREAD;
    spread[CurledPage.STRETCH] = STRETCH_SPREAD;
    for (int i = 0; i < PaperCurl.SHAPES; i++) {
      spread[CurledPage.CURL + i] = HEIGHT_SPREAD[PaperCurl.power(i)];
    }
  }

  /** The page that fits best, sought from a first guess. */
  static CurledPage fit(CurledPage start, double usualFocal, List<Sighting> sightings) {
    return new CurlFit(start, usualFocal, sightings).fit();
  }

  private CurledPage fit() {
    CurledPage best = start;
    double damping = 1e-3;
    double[] off = off(best);
    double scale = scale(off);
    double cost = cost(best, off, scale);
    for (int step = 0; step < STEPS && damping < 1e6; step++) {
      CurledPage next = best.with(moved(best, off, scale, damping));
      double[] nextOff = off(next);
      double nextCost = cost(next, nextOff, scale);
      if (!(nextCost < cost)) {
        damping *= 8;
        continue;
      }
      boolean done = cost - nextCost < DONE * cost;
      best = next;
      off = nextOff;
      damping = Math.max(1e-6, damping / 6);
      scale = scale(off);
      cost = cost(best, off, scale);
      if (done) {
        break;
      }
    }
    return best;
  }

  private double[] off(CurledPage page) {
    double[] off = new double[places.size()];
    for (int i = 0; i < off.length; i++) {
      Point mapped = page.toPixel(places.get(i));
      off[i] = sightings.get(i).off(mapped);
    }
    return off;
  }

  /** The usual deviation in pixels, by its median, which outliers do not move. */
  private static double scale(double[] off) {
    double[] sorted = Arrays.stream(off).map(Math::abs).sorted().toArray();
    // The median of a bell curve's absolute values is 0.6745 of its standard deviation.
    return Math.max(EXACT, sorted[sorted.length / 2] / 0.6745);
  }

  private double cost(CurledPage page, double[] off, double scale) {
    double cost = 0;
    double tolerated = TOLERANT * scale;
    for (double one : off) {
      double share = one / tolerated;
      cost += tolerated * tolerated / (scale * scale) * Math.log1p(share * share);
    }
    for (double one : beliefs(page.numbers())) {
      cost += one * one;
    }
    return cost;
  }

  /** How far off what is known beforehand numbers are, in standard deviations. */
  private double[] beliefs(double[] numbers) {
    double[] beliefs = new double[CurledPage.NUMBERS + CURVATURES * CURVATURES];
    for (int i = 0; i < CurledPage.NUMBERS; i++) {
      beliefs[i] = spread[i] == 0 ? 0 : (numbers[i] - usual[i]) / spread[i];
    }
    int at = CurledPage.NUMBERS;
    for (int i = 0; i < CURVATURES; i++) {
      for (int j = 0; j < CURVATURES; j++) {
        double u = 2.0 * i / (CURVATURES - 1) - 1;
        double v = 2.0 * j / (CURVATURES - 1) - 1;
        beliefs[at++] = start.paper().curvature(numbers, CurledPage.CURL, u, v) / CURVATURE_SPREAD;
      }
    }
    return beliefs;
  }

  /** The numbers after one step. */
  private double[] moved(CurledPage page, double[] off, double scale, double damping) {
    double[] numbers = page.numbers();
    NormalEquations equations = new NormalEquations(numbers.length);
    double[] beliefs = beliefs(numbers);
    double[][] offSlopes = new double[numbers.length][];
    double[][] beliefSlopes = new double[numbers.length][];
    for (int k = 0; k < numbers.length; k++) {
      double[] stepped = numbers.clone();
      double by = SMALL * (k == CurledPage.MIDDLE || k == CurledPage.MIDDLE + 1 ? 1000 : 1);
      by *= k >= CurledPage.CURL ? 100 : 1;
      stepped[k] += by;
      offSlopes[k] = slopes(off, off(page.with(stepped)), by);
      beliefSlopes[k] = slopes(beliefs, beliefs(stepped), by);
    }
    double tolerated = TOLERANT * scale;
    double[] row = new double[numbers.length];
    for (int i = 0; i < off.length; i++) {
      double share = off[i] / tolerated;
      double weight = 1 / (scale * scale * (1 + share * share));
      equations.add(column(offSlopes, i, row), off[i], weight);
    }
    for (int i = 0; i < beliefs.length; i++) {
      equations.add(column(beliefSlopes, i, row), beliefs[i], 1);
    }
    double[] step = equations.solve(damping);
    for (int k = 0; k < numbers.length; k++) {
      numbers[k] -= step[k];
    }
    return numbers;
  }

  private static double[] slopes(double[] before, double[] after, double by) {
    double[] slopes = new double[before.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (after[i] - before[i]) / by;
    }
    return slopes;
  }

  private static double[] column(double[][] slopes, int i, double[] row) {
    for (int k = 0; k < row.length; k++) {
      row[k] = slopes[k][i];
    }
    return row;
  }
}
