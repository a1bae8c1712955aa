package sheaf.samples;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * One job's papers: its bench card, two pair sheets on the way, and the pair sheet with which it
 * was done.
 */
final class JobSamples {

  private JobSamples() {}

  static Sample benchCard() {
    Map<String, String> ticks = new TreeMap<>();
    ticks.put("hand", "right");
    ticks.put("loosed_by", "release");
    for (String part : List.of("limbs", "cams", "strings", "cables", "riser", "arrows")) {
      ticks.put("inspect_" + part, "sound");
    }
    ticks.put("cam_stops_found", "top");
    ticks.put("cam_stops_left", "both");
    Scene scene =
        Studio.scene(
            Studio.code(1, 1, Variant.FRONT, Paper.LETTER),
            Behind.WHITE,
            Studio.PLAIN,
            List.of(),
            ticks,
            101);
    return Studio.flatbed(scene, 150, true, 0, 0.8, "read");
  }

  static Sample firstPair() {
    SheetCode code = Studio.code(1, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            12,
            Volley.fieldPoints(3, Studio.AT_DOT, 7),
            Volley.broadheads(3, 3, 31, new MmVector(-33, 14), 8));
    return Studio.flatbed(
        Studio.scene(code, Behind.BACKING, Studio.PLAIN, arrows, Studio.ticks("20", 3, 3), 102),
        200,
        true,
        0,
        -1.4,
        "read");
  }

  static Sample sharedDot() {
    SheetCode code = Studio.code(1, 3, Variant.SHARED_DOT, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            13,
            Volley.fieldPoints(3, new MmVector(14, 6), 7),
            Volley.broadheads(3, 3, 31, new MmVector(-22, -24), 9));
    Map<String, String> ticks = Studio.ticks("20", 3, 3);
    ticks.put("changed", "rest");
    ticks.put("changed_way", "left");
    return Studio.flatbed(
        Studio.scene(code, Behind.BLACK, Studio.BENT, arrows, ticks, 103),
        200,
        false,
        2,
        2.3,
        "read");
  }

  static Sample lastPair() {
    SheetCode code = Studio.code(1, 4, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            14,
            Volley.fieldPoints(3, Studio.AT_DOT, 5),
            Volley.broadheads(3, 3, 31, new MmVector(-1, 2), 5));
    Map<String, String> ticks = Studio.ticks("20", 3, 3);
    ticks.put("changed", "rest");
    ticks.put("changed_way", "left");
    return Studio.flatbed(
        Studio.scene(code, Behind.BACKING, Studio.PLAIN, arrows, ticks, 104),
        200,
        true,
        0,
        0.5,
        "read");
  }
}
