package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;

/** Readings made up for tests. */
public final class Readings {

  static final JobId JOB = JobId.random(new SplittableRandom(5));
  static final LayoutId PAIR = new LayoutId(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES, 1);
  static final LayoutId CARD = new LayoutId(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES, 1);
  private static final LayoutId RETURN_CARD =
      new LayoutId(Variant.RETURN_FRONT, Paper.LETTER, UnitSystem.INCHES, 1);

  private final List<Hole> holes = new ArrayList<>();
  private final List<FieldReading> fields = new ArrayList<>();
  private final List<Reason> reasons = new ArrayList<>();
  private final int number;
  private final LayoutId layout;
  private Optional<PrintScale> scale = Optional.empty();

  private Readings(LayoutId layout, int number) {
    this.layout = layout;
    this.number = number;
  }

  public static Readings pair(int number) {
    return new Readings(PAIR, number);
  }

  static Readings line(int number, Variant variant, UnitSystem units) {
    return new Readings(new LayoutId(variant, Paper.LETTER, units, 1), number);
  }

  static Readings group(int number, UnitSystem units) {
    return new Readings(new LayoutId(Variant.GROUP_GRID, Paper.LETTER, units, 1), number);
  }

  static Readings sightIn(int number, UnitSystem units) {
    return new Readings(new LayoutId(Variant.SIGHT_GRID, Paper.LETTER, units, 1), number);
  }

  static Readings card(int number) {
    return new Readings(CARD, number);
  }

  static Readings returnCard(int number) {
    return new Readings(RETURN_CARD, number);
  }

  /** A hole so far from its own dot, on the page as designed. */
  public Readings shot(Head head, double dx, double dy) {
    Aim aim = head == Head.FIELD ? Aim.FIELD : Aim.BROADHEAD;
    AimDot dot =
        Layouts.find(layout).orElseThrow().dots().stream()
            .filter(d -> d.aim() == aim)
            .findFirst()
            .orElseThrow();
    MmPoint axis = dot.centre().plus(new MmVector(dx, dy));
    holes.add(new Hole(axis, 0.3, 6, head, 0, 0, aim, 0.99));
    return this;
  }

  /** A hole so far from the spot of a band. */
  Readings shotAtBand(int band, double dx, double dy) {
    AimDot dot = Layouts.find(layout).orElseThrow().dots().get(band - 1);
    MmPoint axis = dot.centre().plus(new MmVector(dx, dy));
    holes.add(new Hole(axis, 0.3, 6, Head.FIELD, 0, 0, Aim.FIELD, OptionalInt.of(band), 0.99));
    return this;
  }

  /** A hole so far from the spot of a grid. */
  Readings shotAtGrid(double dx, double dy) {
    AimDot dot = Layouts.find(layout).orElseThrow().dots().get(0);
    MmPoint axis = dot.centre().plus(new MmVector(dx, dy));
    holes.add(new Hole(axis, 0.3, 6, Head.UNKNOWN, 0, 0, Aim.SHARED, 0.99));
    return this;
  }

  public Readings at(double distance, Unit unit) {
    return number("distance", distance, unit);
  }

  Readings number(String key, double distance, Unit unit) {
    fields.add(
        new FieldReading(
            key,
            FieldReading.State.READ,
            String.valueOf(distance),
            OptionalDouble.of(distance),
            Optional.of(unit),
            1));
    return this;
  }

  Readings says(String key, String text) {
    fields.add(
        new FieldReading(
            key, FieldReading.State.READ, text, OptionalDouble.empty(), Optional.empty(), 1));
    return this;
  }

  Readings because(Reason reason) {
    reasons.add(reason);
    return this;
  }

  Readings printedAt(double x, double y) {
    scale = Optional.of(new PrintScale(x, y));
    return this;
  }

  public PageReading read() {
    return new PageReading(
        "scan.jpg",
        reasons,
        Optional.of(new SheetCode(JOB, number, layout)),
        OptionalDouble.of(11.8),
        scale,
        holes,
        fields);
  }
}
