package sheaf.scanner.hole;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.sheet.FlatSheet;

/** Decides which of the circles found are holes, which dot they belong to and with which head. */
final class HoleJudge {

  /** With less evidence it is no hole. */
  static final double POSSIBLE = 0.02;

  /** With this much it is one, whatever is ticked. */
  static final double SURE = 0.5;

  /**
   * A centre whose stated error is larger than this, in millimetres, is a doubt: hardly one axis in
   * a thousand lies farther off than 1.75 times the stated error, and 1.5 mm off is wrong.
   */
  private static final double MOST_ERROR = 0.85;

  /** One hole too many must have this much less evidence than the least of the others. */
  private static final double CLEARLY_LESS = 0.75;

  /** A hole this much nearer to one dot than to the other is surely meant for it. */
  private static final double CLEARLY_NEARER = 1.15;

  private final Layout layout;
  private final ArrowsShot shot;
  private final Bands bands;
  private final List<Hole> holes = new ArrayList<>();
  private final List<SlitLine> slits = new ArrayList<>();
  private final List<Reason> doubts = new ArrayList<>();

  private HoleJudge(Layout layout, ArrowsShot shot) {
    this.layout = layout;
    this.shot = shot;
    this.bands = new Bands(layout, shot);
  }

  /**
   * Judges what was found.
   *
   * @param hairlinesLost whether the picture is too faint and too coarse to show narrow slits
   */
  static HoleReader.Holes judge(
      List<FoundHole> found, Layout layout, ArrowsShot shot, boolean hairlinesLost) {
    HoleJudge judge = new HoleJudge(layout, shot);
    if (!found.isEmpty() && hairlinesLost) {
      judge.doubtHeads();
    }
    List<FoundHole> chosen = judge.choose(found);
    Map<FoundHole, Head> dots = new HashMap<>();
    chosen.forEach(hole -> dots.put(hole, declared(judge.sorted(place(hole)).get(0))));
    Map<FoundHole, Head> heads = Heads.of(chosen, dots, shot);
    judge.doubtTicked(heads.values());
    Blades blades =
        Blades.of(chosen.stream().filter(hole -> heads.get(hole) == Head.BROADHEAD).toList());
    chosen.stream()
        .sorted(Comparator.comparingDouble(hole -> hole.circle().y()))
        .forEach(hole -> judge.add(hole, heads.get(hole), blades));
    List<MmRect> torn = chosen.stream().flatMap(hole -> hole.torn().stream()).toList();
    return new HoleReader.Holes(judge.holes, torn, judge.slits, judge.doubts);
  }

  /** On a shared dot nothing but the slits tells the heads. */
  private void doubtHeads() {
    boolean shared = layout.dots().stream().anyMatch(dot -> dot.aim() == Aim.SHARED);
    if (shared && layout.id().kind().comparesHeads()) {
      doubts.add(
          Reason.of(
              ReasonCode.HEAD_UNSURE,
              "Slits hardly show in this picture: lay the backing behind the sheet, or scan at 200 dpi or more."));
    }
  }

  /** Each zone has its own arrows; a sheet without zones is one. */
  private List<FoundHole> choose(List<FoundHole> found) {
    if (layout.zones().isEmpty()) {
      return choose(found, shot.all());
    }
    Map<Zone, List<FoundHole>> byZone =
        found.stream().collect(groupingBy(hole -> layout.zoneAt(place(hole)).orElseThrow()));
    List<FoundHole> chosen = new ArrayList<>();
    for (Zone zone : layout.zones()) {
      List<FoundHole> own = choose(byZone.getOrDefault(zone, List.of()), shot.at(zone));
      bands.found(zone, own.size());
      chosen.addAll(own);
    }
    return chosen;
  }

  /** As many as are ticked when so many are there; else all that are sure. */
  private List<FoundHole> choose(List<FoundHole> found, OptionalInt ticked) {
    List<FoundHole> best =
        found.stream().sorted(Comparator.comparingDouble(FoundHole::evidence).reversed()).toList();
    if (ticked.isEmpty()) {
      best.stream().filter(hole -> hole.evidence() < SURE).forEach(this::maybe);
      return best.stream().filter(hole -> hole.evidence() >= SURE).toList();
    }
    int wanted = Math.min(ticked.getAsInt(), best.size());
    List<FoundHole> chosen = best.subList(0, wanted);
    chosen.stream().filter(hole -> hole.evidence() < SURE).forEach(this::maybe);
    double least = wanted == 0 ? SURE : chosen.get(wanted - 1).evidence();
    best.subList(wanted, best.size()).stream()
        .filter(hole -> hole.evidence() > CLEARLY_LESS * least)
        .forEach(this::maybe);
    return chosen;
  }

  private void maybe(FoundHole hole) {
    doubt(ReasonCode.HOLE_UNSURE, "Is this an arrow's hole?", place(hole));
  }

  private void add(FoundHole found, Head shape, Blades blades) {
    Circle circle = found.circle();
    MmPoint axis = place(found);
    double axisError = found.error() / FlatSheet.PIXELS_PER_MM;
    if (axisError > MOST_ERROR) {
      doubt(
          ReasonCode.CENTRE_UNSURE,
          "Little of this hole's rim is seen: is its centre right?",
          axis);
    }
    Optional<Zone> zone = layout.zoneAt(axis);
    if (bands.isUnsure(axis)) {
      doubt(ReasonCode.AIM_UNSURE, "Which band was this arrow shot at?", axis);
    }
    AimDot dot =
        zone.map(own -> layout.dots().get(own.number() - 1)).orElseGet(() -> nearest(axis));
    Head head = head(shape, dot, axis);
    boolean broadhead = head == Head.BROADHEAD;
    slits.addAll(broadhead ? found.slits() : List.of());
    holes.add(
        new Hole(
            axis,
            axisError,
            2 * circle.radius() / FlatSheet.PIXELS_PER_MM,
            head,
            broadhead ? blades.count() : 0,
            broadhead ? blades.cut() : 0,
            dot.aim(),
            zone.map(own -> OptionalInt.of(own.number())).orElse(OptionalInt.empty()),
            Math.max(0, Math.min(1, found.evidence()))));
  }

  private static MmPoint place(FoundHole hole) {
    return FlatSheet.toPage(hole.circle().x(), hole.circle().y());
  }

  private List<AimDot> sorted(MmPoint axis) {
    return layout.dots().stream()
        .sorted(Comparator.comparingDouble(dot -> dot.centre().distanceTo(axis)))
        .toList();
  }

  private AimDot nearest(MmPoint axis) {
    List<AimDot> dots = sorted(axis);
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

  /** The shape tells the head, or leaves it to the dot; the dot must not contradict it. */
  private Head head(Head shape, AimDot dot, MmPoint axis) {
    if (!layout.id().kind().comparesHeads()) {
      return shot.head().orElse(declared(dot));
    }
    if (shape == Head.UNKNOWN && dot.aim() == Aim.SHARED) {
      doubt(
          ReasonCode.HEAD_UNSURE,
          "Did a field point or a broadhead make this hole? Its slits do not tell.",
          axis);
    }
    if (shape == Head.UNKNOWN) {
      return declared(dot);
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

  /** Where all arrows bear one head, most of their holes must not look like the other's. */
  private void doubtTicked(Collection<Head> shapes) {
    long other = shapes.stream().filter(this::isOther).count();
    if (2 * other > shapes.size()) {
      boolean field = shot.head().equals(Optional.of(Head.FIELD));
      doubts.add(
          Reason.of(
              ReasonCode.HEAD_AGAINST_DOT,
              "%s are ticked, but most holes look like those of %s: look at the arrows, and at the tick."
                  .formatted(
                      field ? "Field points" : "Broadheads",
                      field ? "broadheads" : "field points")));
    }
  }

  private boolean isOther(Head shape) {
    return shape != Head.UNKNOWN && shot.head().filter(ticked -> ticked != shape).isPresent();
  }

  private static Head declared(AimDot dot) {
    return switch (dot.aim()) {
      case FIELD -> Head.FIELD;
      case BROADHEAD -> Head.BROADHEAD;
      case SHARED -> Head.UNKNOWN;
    };
  }

  private void doubt(ReasonCode code, String question, MmPoint place) {
    doubts.add(Reason.at(code, question, place));
  }
}
