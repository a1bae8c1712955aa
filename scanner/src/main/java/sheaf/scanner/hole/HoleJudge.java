package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.sheet.FlatSheet;

/** Decides what of the circles found are holes, which dot they belong to and with which head. */
final class HoleJudge {

  /** A rim this clear tells the shaft's size where openings are faint. */
  static final double CLEAR_RIM = 0.45;

  /** A rim worse than this is no hole's, where openings are faint. */
  static final double FAINT_RIM = 0.3;

  /** The same where openings are plain to see: flaps may hide most of the rim. */
  static final double OPEN_RIM = 0.05;

  /** A hole this much nearer to one dot than to the other is surely meant for it. */
  private static final double CLEARLY_NEARER = 1.15;

  private final Layout layout;
  private final List<Hole> holes = new ArrayList<>();
  private final List<Reason> doubts = new ArrayList<>();

  private HoleJudge(Layout layout) {
    this.layout = layout;
  }

  static HoleReader.Holes judge(List<FoundHole> found, Layout layout) {
    HoleJudge judge = new HoleJudge(layout);
    found.stream()
        .sorted(Comparator.comparingDouble(hole -> hole.circle().y()))
        .forEach(judge::add);
    return new HoleReader.Holes(judge.holes, judge.doubts);
  }

  private void add(FoundHole found) {
    Circle circle = found.circle();
    MmPoint axis = FlatSheet.toPage(circle.x(), circle.y());
    AimDot dot = nearest(axis);
    Head head = head(found.shape().head(), dot, axis);
    boolean broadhead = head == Head.BROADHEAD;
    holes.add(
        new Hole(
            axis,
            0.25 + Math.max(0, 1 - circle.score()),
            2 * circle.radius() / FlatSheet.PIXELS_PER_MM,
            head,
            broadhead ? found.shape().blades() : 0,
            broadhead ? 2 * found.shape().reach() / FlatSheet.PIXELS_PER_MM : 0,
            dot.aim(),
            Math.max(0, Math.min(1, circle.score()))));
  }

  private AimDot nearest(MmPoint axis) {
    List<AimDot> dots =
        layout.dots().stream()
            .sorted(Comparator.comparingDouble(dot -> dot.centre().distanceTo(axis)))
            .toList();
    Optional<AimDot> next = dots.stream().skip(1).findFirst();
    boolean unsure =
        next.isPresent()
            && next.get().centre().distanceTo(axis)
                < CLEARLY_NEARER * dots.get(0).centre().distanceTo(axis);
    if (unsure) {
      doubt(ReasonCode.AIM_UNSURE, "Which dot was this arrow shot at?", axis);
    }
    return dots.get(0);
  }

  /** The shape tells the head; the dot must not contradict it. */
  private Head head(Head shape, AimDot dot, MmPoint axis) {
    if (shape == Head.UNKNOWN) {
      doubt(
          ReasonCode.HEAD_UNSURE,
          "Did a field point or a broadhead make this hole? Its slits do not tell.",
          axis);
      return dot.aim() == Aim.SHARED ? Head.UNKNOWN : declared(dot);
    }
    if (dot.aim() != Aim.SHARED && declared(dot) != shape) {
      doubt(
          ReasonCode.HEAD_AGAINST_DOT,
          "This hole looks like a %s's, but it is at the dot for %s: which is right?"
              .formatted(
                  shape == Head.FIELD ? "field point" : "broadhead",
                  dot.aim() == Aim.FIELD ? "field points" : "broadheads"),
          axis);
    }
    return shape;
  }

  private static Head declared(AimDot dot) {
    return dot.aim() == Aim.FIELD ? Head.FIELD : Head.BROADHEAD;
  }

  private void doubt(ReasonCode code, String question, MmPoint place) {
    doubts.add(Reason.at(code, question, place));
  }
}
