package sheaf.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Field;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.result.JobSummary;

/** Jobs made up for tests. */
final class Jobs {

  static final JobId JOB = JobId.random(new SplittableRandom(5));

  /** Where the shots of a group lie around its centre, in millimetres. */
  private static final double[][] SCATTER = {{-9, 4}, {7, 8}, {3, -11}, {-4, -6}, {9, -2}, {-2, 5}};

  private final List<PageReading> pages = new ArrayList<>();
  private final UnitSystem units;

  private Jobs(UnitSystem units) {
    this.units = units;
  }

  static Jobs in(UnitSystem units) {
    return new Jobs(units);
  }

  JobSummary summary() {
    return JobSummary.of(JOB, pages);
  }

  /**
   * A bench card on which each of the given rows is ticked: {@code inspect_limbs=sound}. An answer
   * of {@code ?} is handwriting that nobody has read in yet.
   */
  Jobs benchCard(String... ticks) {
    List<FieldReading> fields = new ArrayList<>();
    LayoutId layout = layout(Variant.FRONT);
    for (Field field : Layouts.find(layout).orElseThrow().fields()) {
      Optional<String> answer =
          Stream.of(ticks)
              .filter(tick -> tick.startsWith(field.key() + "="))
              .map(tick -> tick.substring(tick.indexOf('=') + 1))
              .findFirst();
      if (answer.equals(Optional.of("?"))) {
        fields.add(field(field.key(), State.CHECK, ""));
      } else {
        State state = answer.isPresent() ? State.READ : State.BLANK;
        fields.add(field(field.key(), state, answer.orElse("")));
      }
    }
    pages.add(page(layout, List.of(), List.of(), fields));
    return this;
  }

  /** A bench card on which the inspection found everything sound. */
  Jobs soundBenchCard(String... more) {
    Stream<String> sound =
        Stream.of("limbs", "cams", "strings", "cables", "riser", "arrows")
            .map(part -> "inspect_" + part + "=sound");
    Stream<String> rest = Stream.of("hand=right", "loosed_by=release", "cam_stops_left=both");
    return benchCard(
        Stream.of(sound, rest, Stream.of(more)).flatMap(s -> s).toArray(String[]::new));
  }

  /**
   * A pair sheet with so many arrows of each head.
   *
   * @param distance in yards or metres; 0 when it was left blank
   * @param dx from the field points' centre to the broadheads', to the right
   * @param spread 1 for shots about 10 mm from their centre
   */
  Jobs pair(Variant variant, double distance, int shots, double dx, double dy, double spread) {
    pages.add(pairPage(variant, distance, shots, shots, new MmVector(dx, dy), spread, List.of()));
    return this;
  }

  /** A pair sheet on which no broadhead was found. */
  Jobs fieldPointsOnly() {
    MmVector none = new MmVector(0, 0);
    pages.add(pairPage(Variant.TWO_DOTS, 20, 3, 0, none, 1, List.of()));
    return this;
  }

  /** A pair sheet that a person must still look at. */
  Jobs doubtfulPair() {
    Reason reason = Reason.of(ReasonCode.HOLE_UNSURE, "one hole is unsure");
    MmVector shift = new MmVector(31, 12);
    pages.add(pairPage(Variant.TWO_DOTS, 20, 3, 3, shift, 1, List.of(reason)));
    return this;
  }

  private PageReading pairPage(
      Variant variant,
      double distance,
      int fieldShots,
      int broadheadShots,
      MmVector shift,
      double spread,
      List<Reason> reasons) {
    LayoutId layout = layout(variant);
    List<Hole> holes = new ArrayList<>();
    MmVector fieldCentre = new MmVector(-6, 5);
    for (int i = 0; i < fieldShots; i++) {
      holes.add(hole(layout, Head.FIELD, fieldCentre, scatter(i, spread)));
    }
    MmVector broadheadCentre = new MmVector(-6 + shift.dx(), 5 + shift.dy());
    for (int i = 0; i < broadheadShots; i++) {
      holes.add(hole(layout, Head.BROADHEAD, broadheadCentre, scatter(i + 2, -spread)));
    }
    List<FieldReading> fields = new ArrayList<>();
    if (distance > 0) {
      fields.add(
          new FieldReading(
              "distance",
              State.READ,
              String.valueOf(Math.round(distance)),
              OptionalDouble.of(distance),
              Optional.of(units == UnitSystem.INCHES ? Unit.YARD : Unit.METRE),
              1));
    }
    return page(layout, reasons, holes, fields);
  }

  private static MmVector scatter(int shot, double spread) {
    double[] offset = SCATTER[shot % SCATTER.length];
    return new MmVector(offset[0] * spread, offset[1] * spread);
  }

  private static Hole hole(LayoutId layout, Head head, MmVector centre, MmVector scatter) {
    AimDot dot = dot(layout, head);
    boolean slits = head == Head.BROADHEAD;
    return new Hole(
        dot.centre().plus(centre).plus(scatter),
        0.3,
        6,
        head,
        slits ? 3 : 0,
        slits ? 28 : 0,
        dot.aim(),
        0.99);
  }

  private static AimDot dot(LayoutId layout, Head head) {
    Aim own = head == Head.FIELD ? Aim.FIELD : Aim.BROADHEAD;
    return Layouts.find(layout).orElseThrow().dots().stream()
        .filter(dot -> dot.aim() == own || dot.aim() == Aim.SHARED)
        .findFirst()
        .orElseThrow();
  }

  private static FieldReading field(String key, State state, String text) {
    return new FieldReading(key, state, text, OptionalDouble.empty(), Optional.empty(), 1);
  }

  private LayoutId layout(Variant variant) {
    return Layouts.current(variant, Paper.LETTER, units).id();
  }

  private PageReading page(
      LayoutId layout, List<Reason> reasons, List<Hole> holes, List<FieldReading> fields) {
    return new PageReading(
        "scan.jpg",
        reasons,
        Optional.of(new SheetCode(JOB, pages.size() + 1, layout)),
        OptionalDouble.of(11.8),
        Optional.empty(),
        holes,
        fields);
  }
}
