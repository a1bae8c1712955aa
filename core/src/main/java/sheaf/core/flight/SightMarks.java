package sheaf.core.flight;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import sheaf.core.group.LineOfBoth;

/**
 * The marks of a moving sight for any distance, from a few that were shot in and the arrow's speed.
 *
 * <p>A pin that is so far from the eye moves, along an upright scale, in proportion to the tangent
 * of the angle between arrow and line of sight. So a mark is a straight function of that tangent,
 * whose slope is the distance from eye to pin in the scale's own units. With two marks or more the
 * slope is found from them; with one, that distance must be measured.
 *
 * @param shot how the bow shoots
 * @param perTangent scale units for each unit of the tangent; negative where numbers fall with
 *     distance
 * @param atZero the mark at which arrow and line of sight are parallel
 */
public record SightMarks(AimedShot shot, double perTangent, double atZero) {

  /** A mark is set and read to about so much of a scale unit: our own assumption. */
  private static final double MARK_ERROR = 0.25;

  /** A distance is paced or ranged to about half a yard: our own assumption. */
  private static final double DISTANCE_ERROR_METRES = 0.5;

  /**
   * Marks from one that was shot in.
   *
   * @param eyeToPin from eye to pin at full draw, in the scale's units; positive where the scale's
   *     numbers grow with distance
   */
  public static SightMarks from(AimedShot shot, ShotIn one, double eyeToPin) {
    double tangent = Math.tan(shot.angleFor(one.metres()));
    return new SightMarks(shot, eyeToPin, one.mark() - eyeToPin * tangent);
  }

  /**
   * Marks from two or more: through both, or by the line of {@link LineOfBoth}, as mark and
   * distance both have errors.
   *
   * @throws IllegalArgumentException when fewer than two distances were shot in
   */
  public static SightMarks through(AimedShot shot, List<ShotIn> marks) {
    DoubleUnaryOperator tangent = metres -> Math.tan(shot.angleFor(metres));
    LineOfBoth line =
        LineOfBoth.through(
                marks.stream()
                    .map(
                        in ->
                            new LineOfBoth.Point(
                                tangent.applyAsDouble(in.metres()),
                                in.mark(),
                                error(tangent, in.metres()),
                                MARK_ERROR))
                    .toList())
            .orElseThrow(() -> new IllegalArgumentException("marks at two distances are needed"));
    return new SightMarks(shot, line.slope(), line.intercept());
  }

  private static double error(DoubleUnaryOperator tangent, double metres) {
    double half = DISTANCE_ERROR_METRES / 2;
    return Math.abs(
        tangent.applyAsDouble(metres + half)
            - tangent.applyAsDouble(Math.max(metres - half, half)));
  }

  /** The mark for a distance. */
  public double markFor(double metres) {
    return atZero + perTangent * Math.tan(shot.angleFor(metres));
  }
}
