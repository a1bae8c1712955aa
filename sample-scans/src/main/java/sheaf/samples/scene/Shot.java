package sheaf.samples.scene;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;

/**
 * One arrow that went through a sheet.
 *
 * @param axis of the shaft, in millimetres on the page as designed
 * @param head on the arrow
 * @param blades of the head, 0 for a field point
 * @param cut cutting diameter in true millimetres, 0 for a field point
 * @param aim the dot it was shot at
 * @param zone the number of the zone that it was shot at; empty on a sheet without zones
 * @param opening centroid of the hole's opening, on the page as designed; what a plain centroid
 *     gives
 */
public record Shot(
    MmPoint axis, Head head, int blades, double cut, Aim aim, OptionalInt zone, MmPoint opening) {

  /** At a sheet without zones. */
  public Shot(MmPoint axis, Head head, int blades, double cut, Aim aim, MmPoint opening) {
    this(axis, head, blades, cut, aim, OptionalInt.empty(), opening);
  }

  /**
   * How much farther from their dot the broadheads landed than the field points, in true
   * millimetres; empty when one of the two was not shot.
   */
  static Optional<MmVector> offset(List<Shot> shots, Layout layout, PrintScale scale) {
    Optional<MmVector> field = fromDot(shots, Head.FIELD, layout);
    Optional<MmVector> broadhead = fromDot(shots, Head.BROADHEAD, layout);
    return field.flatMap(
        f -> broadhead.map(b -> scale.onPaper(new MmVector(b.dx() - f.dx(), b.dy() - f.dy()))));
  }

  /** The mean way from the dot to a head's holes. */
  private static Optional<MmVector> fromDot(List<Shot> shots, Head head, Layout layout) {
    List<MmVector> ways =
        shots.stream()
            .filter(shot -> shot.head() == head)
            .map(shot -> shot.axis().minus(dot(layout, shot.aim())))
            .toList();
    if (ways.isEmpty()) {
      return Optional.empty();
    }
    double dx = ways.stream().mapToDouble(MmVector::dx).sum();
    double dy = ways.stream().mapToDouble(MmVector::dy).sum();
    return Optional.of(new MmVector(dx, dy).times(1.0 / ways.size()));
  }

  private static MmPoint dot(Layout layout, Aim aim) {
    return layout.dots().stream()
        .filter(dot -> dot.aim() == aim)
        .map(AimDot::centre)
        .findFirst()
        .orElseThrow();
  }
}
