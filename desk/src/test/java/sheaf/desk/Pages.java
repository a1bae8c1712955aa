package sheaf.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Invented readings for tests. */
public final class Pages {

  /** Some job. */
  public static final JobId JOB = JobId.parse("7G4KQ-2M8XE-0").orElseThrow();

  /** Another job. */
  public static final JobId OTHER_JOB = JobId.parse("2TR1Z-Q9KHC-A").orElseThrow();

  private static final Layout PAIR =
      Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES);
  private static final Layout CARD =
      Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);

  private Pages() {}

  /**
   * A pair sheet shot at 20 yd with three arrows of each head; field points around their dot,
   * broadheads off theirs.
   *
   * @param right how far right of their dot the broadheads' centre lies, in millimetres
   * @param down how far below it
   */
  public static PageReading pair(JobId job, int number, double right, double down) {
    List<Hole> holes = new ArrayList<>();
    holes.addAll(group(Aim.FIELD, Head.FIELD, 0, 0));
    holes.addAll(group(Aim.BROADHEAD, Head.BROADHEAD, right, down));
    return new PageReading(
        "pair.jpg",
        List.of(),
        Optional.of(new SheetCode(job, number, PAIR.id())),
        OptionalDouble.of(11.81),
        Optional.empty(),
        holes,
        List.of(
            field("distance", State.READ, "20", OptionalDouble.of(20), Optional.of(Unit.YARD)),
            field("arrows_field", State.READ, "3", OptionalDouble.of(3), Optional.empty()),
            field("arrows_broadhead", State.READ, "3", OptionalDouble.of(3), Optional.empty()),
            blank("changed")));
  }

  /** A line sheet with printed distances, one arrow a band, each so far right of the line. */
  public static PageReading line(JobId job, int number, double... right) {
    Layout layout = Layouts.current(Variant.SET_DISTANCES, Paper.LETTER, UnitSystem.INCHES);
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < right.length; i++) {
      MmPoint spot = layout.dots().get(i).centre();
      MmPoint axis = new MmPoint(hundredth(spot.x() + right[i]), hundredth(spot.y()));
      holes.add(new Hole(axis, 0.3, 6.5, Head.FIELD, 0, 0, Aim.FIELD, OptionalInt.of(i + 1), 0.98));
    }
    return shot(job, number, layout, holes);
  }

  /** A sight-in sheet shot from 20 yd with three arrows, their middle so far from the spot. */
  public static PageReading sightIn(JobId job, int number, double right, double down) {
    Layout layout = Layouts.current(Variant.SIGHT_GRID, Paper.LETTER, UnitSystem.INCHES);
    MmPoint spot = layout.dots().get(0).centre();
    List<Hole> holes = new ArrayList<>();
    for (double[] off : new double[][] {{-4, 3}, {5, 0}, {-1, -3}}) {
      MmPoint axis =
          new MmPoint(hundredth(spot.x() + right + off[0]), hundredth(spot.y() + down + off[1]));
      holes.add(new Hole(axis, 0.3, 6.5, Head.FIELD, 0, 0, Aim.SHARED, 0.98));
    }
    return shot(job, number, layout, holes);
  }

  private static PageReading shot(JobId job, int number, Layout layout, List<Hole> holes) {
    return new PageReading(
        "target.jpg",
        List.of(),
        Optional.of(new SheetCode(job, number, layout.id())),
        OptionalDouble.of(11.81),
        Optional.empty(),
        holes,
        List.of(
            field("distance", State.READ, "20", OptionalDouble.of(20), Optional.of(Unit.YARD))));
  }

  /** A group of three whose centre lies so far from its dot; its shots are 4 to 5 mm off it. */
  private static List<Hole> group(Aim aim, Head head, double right, double down) {
    MmPoint dot =
        PAIR.dots().stream()
            .filter(d -> d.aim() == aim)
            .map(AimDot::centre)
            .findFirst()
            .orElseThrow();
    double[][] shots = {{-4, 3}, {5, 0}, {-1, -3}};
    List<Hole> holes = new ArrayList<>();
    for (double[] shot : shots) {
      MmPoint axis =
          new MmPoint(hundredth(dot.x() + right + shot[0]), hundredth(dot.y() + down + shot[1]));
      boolean blades = head == Head.BROADHEAD;
      holes.add(new Hole(axis, 0.3, 6.5, head, blades ? 3 : 0, blades ? 31.5 : 0, aim, 0.98));
    }
    return holes;
  }

  /** As it is written down, so that what is read back is equal. */
  private static double hundredth(double mm) {
    return Math.round(mm * 100) / 100.0;
  }

  /** A bench card with handwriting, and limbs as the inspection found them. */
  public static PageReading benchCard(JobId job, int number, String limbs) {
    return new PageReading(
        "card.jpg",
        List.of(
            Reason.of(
                ReasonCode.WRITTEN_NUMBER,
                "Draw length as left is written by hand: type it in from the picture.")),
        Optional.of(new SheetCode(job, number, CARD.id())),
        OptionalDouble.of(11.81),
        Optional.empty(),
        List.of(),
        List.of(
            field("inspect_limbs", State.READ, limbs, OptionalDouble.empty(), Optional.empty()),
            field("hand", State.READ, "right", OptionalDouble.empty(), Optional.empty()),
            blank("loosed_by"),
            field(
                "draw_length_left",
                State.CHECK,
                "",
                OptionalDouble.empty(),
                Optional.of(Unit.INCH))));
  }

  /** A bench card on which draw length and brace height as found are unsure. */
  public static PageReading unsureCard(JobId job, int number) {
    FieldReading draw = inches("draw_length_found", State.CHECK, "29 6/16", 29.375);
    FieldReading brace = inches("brace_height_found", State.CHECK, "6 6/16", 6.375);
    return card(
        job,
        number,
        List.of(
            doubt(draw, "Is it 29 6/16 that is written at \"Draw length\"?"),
            doubt(brace, "Is it 6 6/16 that is written at \"Brace height\"?")),
        List.of(draw, brace, blank("axle_to_axle_left"), blank("peak_weight_left")));
  }

  /** The same read again, draw length surely. */
  public static PageReading sureCard(JobId job, int number, String text, double value) {
    return card(
        job,
        number,
        List.of(),
        List.of(
            inches("draw_length_found", State.READ, text, value),
            inches("brace_height_found", State.READ, "6 6/16", 6.375)));
  }

  private static PageReading card(
      JobId job, int number, List<Reason> doubts, List<FieldReading> fields) {
    return new PageReading(
        "card.jpg",
        doubts,
        Optional.of(new SheetCode(job, number, CARD.id())),
        OptionalDouble.of(11.81),
        Optional.empty(),
        List.of(),
        fields);
  }

  private static FieldReading inches(String key, State state, String text, double value) {
    return field(key, state, text, OptionalDouble.of(value), Optional.of(Unit.INCH));
  }

  private static Reason doubt(FieldReading field, String question) {
    MmPoint place = CARD.field(field.key()).boxes().get(0).centre();
    MmPoint written = new MmPoint(hundredth(place.x()), hundredth(place.y()));
    return Reason.at(ReasonCode.WRITTEN_NUMBER, question, written);
  }

  /** A page that could not be read. */
  public static PageReading refused() {
    return PageReading.refused(
        "bad.jpg",
        Reason.of(
            ReasonCode.TOO_FEW_MARKS,
            "Two register marks are seen, four are needed: photograph the whole sheet."));
  }

  /** The same page with a doubt. */
  public static PageReading doubted(PageReading page, ReasonCode code, String message) {
    return doubted(page, code, message, new MmPoint(100, 120));
  }

  /** The same at some place. */
  public static PageReading doubted(
      PageReading page, ReasonCode code, String message, MmPoint place) {
    List<Reason> reasons = new ArrayList<>(page.reasons());
    reasons.add(Reason.at(code, message, place));
    return new PageReading(
        page.source(),
        reasons,
        page.sheet(),
        page.pixelsPerMm(),
        page.printScale(),
        page.holes(),
        page.fields());
  }

  private static FieldReading field(
      String key, State state, String text, OptionalDouble value, Optional<Unit> unit) {
    return new FieldReading(key, state, text, value, unit, 0.99);
  }

  private static FieldReading blank(String key) {
    return field(key, State.BLANK, "", OptionalDouble.empty(), Optional.empty());
  }
}
