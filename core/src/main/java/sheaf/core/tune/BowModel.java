package sheaf.core.tune;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import sheaf.core.group.Ellipse;
import sheaf.core.group.Hotelling;
import sheaf.core.page.MmVector;

/**
 * What is known of a bow: where its broadheads go now, and what each lever does to that. Immutable.
 *
 * <p>Offset and responses are a linear model with normal errors, sideways and upright by
 * themselves: a move of u steps adds u times the lever's response to the offset, a sheet measures
 * the offset with a variance that its own shots tell. All of a job's sheets thus speak together,
 * and what is unsure stays unsure. Source: the dynamic linear model, M. West and J. Harrison,
 * Bayesian Forecasting and Dynamic Models, chapter 4.
 *
 * <p>Millimetres at 20 yd, x right, y down.
 */
public final class BowModel {

  /** Nothing is known of an offset before a sheet was shot: a metre either way. */
  private static final double ANYWHERE_MM = 1000;

  /**
   * A move is made to about a quarter of the finest step, by the usual response: our own
   * assumption; without it, long jobs would come to trust old sheets too much.
   */
  private static final double SETTING_ERROR = 0.25;

  private static final int OFFSET = 0;

  /** Who would shoot more than this of each head to settle one setting should move on instead. */
  private static final int MOST_EACH = 30;

  /**
   * Of sheets at which all went as noted, one in a hundred is taken for one at which it did not.
   */
  private static final double UNEXPECTED = 0.01;

  private final List<Lever> levers;
  private final Scatter scatter;
  private final Gaussian right;
  private final Gaussian down;

  private BowModel(List<Lever> levers, Scatter scatter, Gaussian right, Gaussian down) {
    this.levers = levers;
    this.scatter = scatter;
    this.right = right;
    this.down = down;
  }

  /**
   * A bow of which no sheet has been shot.
   *
   * @param levers all that will ever be moved or asked about
   * @param prior what earlier bows teach of them
   * @param scatter of the shots
   */
  static BowModel start(List<Lever> levers, ShopPrior prior, Scatter scatter) {
    int size = levers.size() + 1;
    double[] rightMean = new double[size];
    double[] rightDeviation = new double[size];
    double[] downMean = new double[size];
    double[] downDeviation = new double[size];
    rightDeviation[OFFSET] = ANYWHERE_MM;
    downDeviation[OFFSET] = ANYWHERE_MM;
    for (int i = 1; i < size; i++) {
      Response response = prior.of(levers.get(i - 1));
      rightMean[i] = response.perStep().dx();
      rightDeviation[i] = response.rightDeviation();
      downMean[i] = response.perStep().dy();
      downDeviation[i] = response.downDeviation();
    }
    return new BowModel(
        List.copyOf(levers),
        scatter,
        Gaussian.independent(rightMean, rightDeviation),
        Gaussian.independent(downMean, downDeviation));
  }

  /** Once a lever was moved. */
  BowModel after(Move move) {
    int lever = index(move.lever());
    Step step = move.lever().step();
    double slip = SETTING_ERROR * step.finest() * step.usualMm();
    double times = move.steps();
    return new BowModel(
        levers,
        scatter,
        right.added(OFFSET, lever, times, slip * slip),
        down.added(OFFSET, lever, times, slip * slip));
  }

  /** Once something was changed that cannot be counted. */
  BowModel afterSomething() {
    return new BowModel(
        levers,
        scatter,
        right.forgotten(OFFSET, 0, ANYWHERE_MM),
        down.forgotten(OFFSET, 0, ANYWHERE_MM));
  }

  /**
   * Once a sheet was shot.
   *
   * @param offset that it showed
   * @param weight of the sheet: the offset's variance is that of the shots over this
   */
  BowModel seen(MmVector offset, double weight) {
    double[] alone = new double[levers.size() + 1];
    alone[OFFSET] = 1;
    double variance = scatter.variance() / weight;
    return new BowModel(
        levers,
        scatter,
        right.seen(alone, offset.dx(), variance),
        down.seen(alone, offset.dy(), variance));
  }

  /** Where broadheads go now. */
  public MmVector offset() {
    return new MmVector(right.mean(OFFSET), down.mean(OFFSET));
  }

  /** Standard deviation of what is known of that along an axis, in millimetres. */
  double offsetDeviation(Axis axis) {
    return (axis == Axis.SIDEWAYS ? right : down).deviation(OFFSET);
  }

  /** Where they truly go with 95 % confidence: by F(2, 2v), v the shots less their centres. */
  public Ellipse region() {
    return region(right.deviation(OFFSET), down.deviation(OFFSET), scatter.freedom());
  }

  private Ellipse region(double rightDeviation, double downDeviation, int freedom) {
    double factor = Math.sqrt(2 * Hotelling.fQuantile(2 * freedom, 1 - Hotelling.CONFIDENCE));
    double a = factor * rightDeviation;
    double b = factor * downDeviation;
    return a >= b ? new Ellipse(offset(), a, b, 0) : new Ellipse(offset(), b, a, Math.PI / 2);
  }

  /** Whether both heads are shown to hit the same point: all of the region lies within it. */
  boolean isShown(double toleranceMm) {
    return region().farthestReach() <= toleranceMm;
  }

  /**
   * How many more shots of each kind at this setting would settle whether both hit the same point,
   * if the offset stays as it is found: until the region lies wholly within the tolerance or wholly
   * beyond it.
   *
   * @return empty when more than {@value #MOST_EACH} would be needed
   */
  OptionalInt moreOfEach(double toleranceMm) {
    return IntStream.rangeClosed(0, MOST_EACH)
        .filter(more -> settles(regionWith(more), toleranceMm))
        .findFirst();
  }

  private static boolean settles(Ellipse region, double toleranceMm) {
    double nearest = region.centre().length();
    boolean mayHold = nearest + region.semiMinor() <= toleranceMm;
    boolean mayMiss = nearest - region.semiMinor() >= toleranceMm;
    // The exact reaches take long, and few regions come into question.
    return mayHold && region.farthestReach() <= toleranceMm
        || mayMiss && region.nearestReach() >= toleranceMm;
  }

  private Ellipse regionWith(int more) {
    double perMm = more / (2 * scatter.variance());
    return region(
        with(right.deviation(OFFSET), perMm),
        with(down.deviation(OFFSET), perMm),
        scatter.freedom() + 2 * more);
  }

  private static double with(double deviation, double precision) {
    return deviation / Math.sqrt(1 + deviation * deviation * precision);
  }

  /**
   * Whether a sheet shows what is expected of it: half the square of how far it lies off, over its
   * variance, follows F(2, 2v) where all went as noted.
   *
   * @param shown the sheet's offset
   * @param weight of the sheet, as for {@link #seen}
   */
  boolean expects(MmVector shown, double weight) {
    double variance = scatter.variance() / weight;
    double dx = shown.dx() - right.mean(OFFSET);
    double dy = shown.dy() - down.mean(OFFSET);
    double f =
        (dx * dx / (right.covariance(OFFSET, OFFSET) + variance)
                + dy * dy / (down.covariance(OFFSET, OFFSET) + variance))
            / 2;
    return f <= Hotelling.fQuantile(2 * scatter.freedom(), UNEXPECTED);
  }

  /** What a lever does. */
  public Response response(Lever lever) {
    int i = index(lever);
    return new Response(
        new MmVector(right.mean(i), down.mean(i)), right.deviation(i), down.deviation(i));
  }

  /**
   * How many steps of a lever leave the least to be expected of the offset: -E(d·r) / E(r·r), which
   * moves the less the less is known of the response r. Not rounded; zero when nothing is known.
   */
  double bestSteps(Lever lever) {
    int i = index(lever);
    double together = together(right, i) + together(down, i);
    double square = square(right, i) + square(down, i);
    return 0.0 - together / square;
  }

  private static double together(Gaussian axis, int lever) {
    return axis.mean(OFFSET) * axis.mean(lever) + axis.covariance(OFFSET, lever);
  }

  private static double square(Gaussian axis, int lever) {
    return axis.mean(lever) * axis.mean(lever) + axis.covariance(lever, lever);
  }

  /** How the shots scatter. */
  public Scatter scatter() {
    return scatter;
  }

  private int index(Lever lever) {
    int found = levers.indexOf(lever);
    if (found < 0) {
      throw new IllegalArgumentException("a lever that this bow is not known to have: " + lever);
    }
    return found + 1;
  }
}
