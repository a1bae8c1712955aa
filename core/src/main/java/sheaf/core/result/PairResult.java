package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.Equivalence;
import sheaf.core.group.Group;
import sheaf.core.group.Offset;
import sheaf.core.group.SamePoint;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.measure.Distance;
import sheaf.core.measure.MinutesOfAngle;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;

/**
 * What one pair sheet came to.
 *
 * <p>Places of shots are true millimetres on paper, corrected for the print scale, from the dot
 * that the shot was aimed at: x to the right, y down.
 *
 * @param sheet which sheet
 * @param state how sure its reading is
 * @param distance shot from; empty when it was left blank or a person must read it
 * @param field the field points' shots; empty when there were none
 * @param broadhead the broadheads' shots; empty when there were none
 * @param shaftDiameter in true millimetres, for drawing the holes
 * @param offset broadheads' centre minus field points' centre; empty unless both heads were shot
 */
public record PairResult(
    SheetCode sheet,
    ReadingState state,
    Optional<Distance> distance,
    Optional<Group> field,
    Optional<Group> broadhead,
    double shaftDiameter,
    Optional<Offset> offset) {

  /**
   * Computes the result of a pair sheet.
   *
   * @throws IllegalArgumentException when the page is no pair sheet or was refused
   */
  public static PairResult of(PageReading page) {
    SheetCode sheet =
        page.sheet().orElseThrow(() -> new IllegalArgumentException("the page has no code"));
    Layout layout =
        Layouts.find(sheet.layout())
            .filter(found -> !found.dots().isEmpty())
            .orElseThrow(() -> new IllegalArgumentException("no pair sheet: " + sheet.text()));
    PrintScale scale = page.printScale().orElse(PrintScale.TRUE_SIZE);
    Optional<Group> field = group(page.holes(), Head.FIELD, layout, scale);
    Optional<Group> broadhead = group(page.holes(), Head.BROADHEAD, layout, scale);
    return new PairResult(
        sheet,
        page.state(),
        distance(page),
        field,
        broadhead,
        page.holes().stream().mapToDouble(Hole::diameter).average().orElse(0) * scale.mean(),
        field.flatMap(f -> broadhead.map(b -> Offset.between(f, b))));
  }

  /** The offset's length as an angle, in minutes; empty when the distance is not known. */
  public Optional<Double> offsetMinutes() {
    return offset.flatMap(o -> distance.map(d -> MinutesOfAngle.of(o.shift().length(), d)));
  }

  /** How far apart the two centres may be to count as the same point; needs the distance. */
  public Optional<Double> tolerance() {
    return distance.map(SamePoint::toleranceAt);
  }

  /** Whether both heads hit the same point; empty when the distance or a head is missing. */
  public Optional<Equivalence> equivalence() {
    return offset.flatMap(o -> tolerance().map(t -> Equivalence.judge(o, t)));
  }

  private static Optional<Group> group(
      List<Hole> holes, Head head, Layout layout, PrintScale scale) {
    List<MmPoint> shots = new ArrayList<>();
    for (Hole hole : holes) {
      if (hole.head() == head) {
        MmVector fromDot = scale.onPaper(hole.axis().minus(dot(layout, hole).centre()));
        shots.add(new MmPoint(fromDot.dx(), fromDot.dy()));
      }
    }
    return shots.isEmpty() ? Optional.empty() : Optional.of(new Group(shots));
  }

  private static AimDot dot(Layout layout, Hole hole) {
    return layout.dots().stream()
        .filter(dot -> dot.aim() == hole.aim())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no dot " + hole.aim()));
  }

  private static Optional<Distance> distance(PageReading page) {
    return page.field("distance")
        .filter(field -> field.value().isPresent())
        .map(field -> new Distance(field.value().getAsDouble(), field.unit().orElse(Unit.YARD)));
  }
}
