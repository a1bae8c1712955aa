package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.Centre;
import sheaf.core.group.Flyer;
import sheaf.core.group.Group;
import sheaf.core.group.Spread;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.SheetKind;
import sheaf.core.measure.Distance;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;

/**
 * What one group sheet or sight-in sheet came to. All its holes are one group, whatever their
 * heads.
 *
 * @param sheet which sheet
 * @param state how sure its reading is
 * @param distance shot from; empty when it was left blank or a person must read it
 * @param head on the arrows, as ticked; unknown when nothing sure was ticked
 * @param shots in true millimetres on paper from the dot, x right, y down; empty without any
 * @param shaftDiameter in true millimetres, for drawing the holes
 */
public record GroupResult(
    SheetCode sheet,
    ReadingState state,
    Optional<Distance> distance,
    Head head,
    Optional<Group> shots,
    double shaftDiameter) {

  /**
   * Computes the result of a group sheet or a sight-in sheet.
   *
   * @throws IllegalArgumentException when the page is neither or was refused
   */
  public static GroupResult of(PageReading page) {
    SheetCode sheet =
        page.sheet().orElseThrow(() -> new IllegalArgumentException("the page has no code"));
    Layout layout =
        Layouts.find(sheet.layout())
            .filter(found -> isGroup(found.id().kind()))
            .orElseThrow(() -> new IllegalArgumentException("no group sheet: " + sheet.text()));
    PrintScale scale = page.printScale().orElse(PrintScale.TRUE_SIZE);
    AimDot dot = layout.dots().get(0);
    List<MmPoint> shots = new ArrayList<>();
    for (Hole hole : page.holes()) {
      MmVector fromDot = scale.onPaper(hole.axis().minus(dot.centre()));
      shots.add(new MmPoint(fromDot.dx(), fromDot.dy()));
    }
    return new GroupResult(
        sheet,
        page.state(),
        ShotFrom.of(page),
        Head.ticked(page.fields()).orElse(Head.UNKNOWN),
        shots.isEmpty() ? Optional.empty() : Optional.of(new Group(shots)),
        page.holes().stream().mapToDouble(Hole::diameter).average().orElse(0) * scale.mean());
  }

  private static boolean isGroup(SheetKind kind) {
    return kind == SheetKind.GROUP || kind == SheetKind.SIGHT_IN;
  }

  /** Whether it is a sight-in sheet, from which the sight is moved. */
  public boolean isSightIn() {
    return sheet.layout().kind() == SheetKind.SIGHT_IN;
  }

  /** Where its middle is, from the dot; empty without shots. */
  public Optional<Centre> centre() {
    return shots.map(Centre::of);
  }

  /** How to move the sight; empty on a group sheet and without shots. */
  public Optional<SightMove> sightMove() {
    return centre().filter(any -> isSightIn()).map(centre -> SightMove.of(centre, distance));
  }

  /** How widely it scatters; empty with less than two shots. */
  public Optional<Spread> spread() {
    return shots.flatMap(Spread::of);
  }

  /** The shot that does not seem to belong to it, if there is one. */
  public Optional<Flyer> flyer() {
    return shots.flatMap(Flyer::of);
  }
}
