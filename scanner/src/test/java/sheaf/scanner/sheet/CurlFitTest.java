package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.opencv.core.Point;
import org.opencv.core.Size;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.NativeLibraries;

class CurlFitTest {

  private static final Layout LAYOUT =
      Layouts.current(Variant.TWO_DOTS, Paper.A4, UnitSystem.METRIC);
  private static final MarkFamily FAMILY = MarkFamily.PAIR_TWO_DOTS_A4;
  private static final Size PICTURE = new Size(RolledPaper.WIDTH, RolledPaper.HEIGHT);
  private static final double USUAL_FOCAL = 3000;

  @BeforeContainer
  static void load() {
    NativeLibraries.load();
  }

  /** A roll of 500 mm lifts the short edges of an A4 sheet by 22 mm, its long edges by 11. */
  @Property(tries = 40)
  void aCurledTiltedSheetIsFlattenedToATenthOfAMillimetreByMarksAndLines(
      @ForAll @DoubleRange(min = 500, max = 1e5) double radius,
      @ForAll @IntRange(max = 180) int direction,
      @ForAll @IntRange(max = 40) int tilt,
      @ForAll @IntRange(max = 360) int toward,
      @ForAll @IntRange(max = 360) int roll,
      @ForAll @DoubleRange(min = 2500, max = 4500) double focal,
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double barrel,
      @ForAll @IntRange(max = 1000) int seed) {
    PageMap truth = rolled(radius, direction, tilt, toward, roll, focal, barrel);
    Registration.Marks marks = marks(truth, new SplittableRandom(seed));
    CurledPage rough = Smoothing.byMarks(marks, PICTURE);

    List<Sighting> seen = marks.sightings(8);
    seen.addAll(lines(truth, new SplittableRandom(seed + 1)));
    CurledPage page = CurlFit.fit(rough, USUAL_FOCAL, seen);

    assertThat(worstOff(page, truth)).isLessThan(0.3);
    assertThat(usualOff(page, truth)).isLessThan(0.1);
  }

  @Property(tries = 20)
  void marksAloneFlattenASheetToHalfAMillimetre(
      @ForAll @DoubleRange(min = 700, max = 1e5) double radius,
      @ForAll @IntRange(max = 180) int direction,
      @ForAll @IntRange(max = 40) int tilt,
      @ForAll @IntRange(max = 360) int toward) {
    PageMap truth = rolled(radius, direction, tilt, toward, 5, 3000, 0.01);

    CurledPage page = Smoothing.byMarks(marks(truth, new SplittableRandom(3)), PICTURE);

    assertThat(usualOff(page, truth)).isLessThan(0.5);
  }

  @Property(tries = 10)
  void aFewLinesTakenForTheirNeighboursHardlyMoveTheRest(@ForAll @IntRange(max = 1000) int seed) {
    PageMap truth = new RolledPaper(Paper.A4, 900, 0.4, 0.4, 1.2, 0, 3100, 0.01);
    SplittableRandom random = new SplittableRandom(seed);
    Registration.Marks marks = marks(truth, random);
    List<Sighting> seen = marks.sightings(8);
    for (Sighting line : lines(truth, random)) {
      boolean mistaken = random.nextInt(20) == 0;
      Point moved =
          new Point(
              line.seen().x + (mistaken ? 12 * line.acrossX() : 0),
              line.seen().y + (mistaken ? 12 * line.acrossY() : 0));
      seen.add(
          new Sighting(line.place(), moved, line.acrossX(), line.acrossY(), line.pixelsPerMm(), 0));
    }

    CurledPage page = CurlFit.fit(Smoothing.byMarks(marks, PICTURE), USUAL_FOCAL, seen);

    assertThat(usualOff(page, truth)).isLessThan(0.1);
  }

  /** Angles in degrees. */
  private static PageMap rolled(
      double radius, int direction, int tilt, int toward, int roll, double focal, double barrel) {
    return new RolledPaper(
        Paper.A4,
        radius,
        Math.toRadians(direction),
        Math.toRadians(tilt),
        Math.toRadians(toward),
        Math.toRadians(roll),
        focal,
        barrel);
  }

  /** The marks' corners as a camera sees them: a third of a pixel of error each way. */
  private static Registration.Marks marks(PageMap truth, SplittableRandom random) {
    List<SeenMark> seen = new ArrayList<>();
    for (RegisterMark mark : FAMILY.marks()) {
      seen.add(
          new SeenMark(
              mark.tag(),
              mark.corners().stream().map(corner -> blurred(truth, corner, random)).toList()));
    }
    return new Registration.Marks(FAMILY, seen);
  }

  private static Point blurred(PageMap truth, MmPoint place, SplittableRandom random) {
    Point seen = truth.toPixel(place);
    return new Point(seen.x + 0.33 * random.nextGaussian(), seen.y + 0.33 * random.nextGaussian());
  }

  private static List<Sighting> lines(PageMap truth, SplittableRandom random) {
    List<Sighting> seen = new ArrayList<>();
    for (PrintedLines.Place line : PrintedLines.of(LAYOUT)) {
      Point right = truth.right(line.at());
      Point down = truth.down(line.at());
      double x = right.x * line.alongX() + down.x * line.alongY();
      double y = right.y * line.alongX() + down.y * line.alongY();
      double length = Math.hypot(x, y);
      Point at = blurred(truth, line.at(), random);
      seen.add(new Sighting(line.at(), at, -y / length, x / length, 8, line.part()));
    }
    return seen;
  }

  private static double worstOff(PageMap map, PageMap truth) {
    return offs(map, truth).stream().mapToDouble(off -> off).max().orElseThrow();
  }

  private static double usualOff(PageMap map, PageMap truth) {
    return Math.sqrt(
        offs(map, truth).stream().mapToDouble(off -> off * off).average().orElseThrow());
  }

  /** Over the target, in millimetres. */
  private static List<Double> offs(PageMap map, PageMap truth) {
    MmRect target = LAYOUT.target().orElseThrow();
    List<Double> offs = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      for (int j = 0; j <= 10; j++) {
        MmPoint place =
            new MmPoint(
                target.x() + target.width() * i / 10, target.y() + target.height() * j / 10);
        Point a = map.toPixel(place);
        Point b = truth.toPixel(place);
        offs.add(Math.hypot(a.x - b.x, a.y - b.y) / Geometry.pixelsPerMm(truth, place));
      }
    }
    return offs;
  }
}
