package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.Variant;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;

/**
 * Scans of a line sheet and a group sheet, with which the job of {@link JobSamples} ends, and of a
 * sight-in sheet of another.
 */
final class TargetSamples {

  /** Two arrows at each band of the line. */
  private static final int ARROWS = 2;

  /** Holes of one band are this far above and below each other, in millimetres. */
  private static final double APART = 13;

  private TargetSamples() {}

  /** Once broadheads hit with the field points, impact no longer drifts with distance. */
  static Sample line() {
    SheetCode code = Studio.code(1, 5, Variant.SET_DISTANCES, Paper.LETTER);
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    SplittableRandom random = new SplittableRandom(15);
    List<Arrow> arrows = new ArrayList<>();
    Map<String, String> ticks = new TreeMap<>();
    for (Zone band : layout.zones()) {
      AimDot dot = layout.dots().get(band.number() - 1);
      double scatter = 0.25 * Math.hypot(5, band.distance().orElseThrow().value());
      for (int i = 0; i < ARROWS; i++) {
        double down = APART * (i - 0.5) + random.nextGaussian();
        MmVector off = new MmVector(scatter * random.nextGaussian(), down);
        MmPoint axis = dot.centre().plus(off);
        OptionalInt zone = OptionalInt.of(band.number());
        arrows.add(new Arrow(axis, Head.FIELD, 0, 0, dot.aim(), zone));
      }
      ticks.put("arrows_" + band.number(), String.valueOf(ARROWS));
    }
    return Studio.flatbed(
        Studio.scene(code, Behind.BACKING, Studio.PLAIN, arrows, ticks, 105),
        200,
        true,
        0,
        0.9,
        "read");
  }

  static Sample group() {
    SheetCode code = Studio.code(1, 6, Variant.GROUP_GRID, Paper.LETTER);
    List<Arrow> arrows = Studio.shots(code, 16, Volley.fieldPoints(5, Studio.AT_DOT, 11));
    return Studio.flatbed(
        Studio.scene(code, Behind.BACKING, Studio.PLAIN, arrows, ticks("20", 5), 106),
        200,
        true,
        0,
        -0.6,
        "read");
  }

  /** Two squares and a half off, so that the sight must be moved right and down. */
  static Sample sightIn() {
    SheetCode code = Studio.code(9, 2, Variant.SIGHT_GRID, Paper.A4);
    List<Arrow> arrows = Studio.shots(code, 92, Volley.fieldPoints(4, new MmVector(42, 26), 7));
    return Studio.flatbed(
        Studio.scene(code, Behind.BLACK, Studio.CREAM, arrows, ticks("18", 4), 902),
        200,
        false,
        2,
        1.7,
        "read");
  }

  private static Map<String, String> ticks(String distance, int arrows) {
    Map<String, String> ticks = new TreeMap<>();
    ticks.put("distance", distance);
    ticks.put("arrows_shot", String.valueOf(arrows));
    ticks.put("head", "field points");
    return ticks;
  }
}
