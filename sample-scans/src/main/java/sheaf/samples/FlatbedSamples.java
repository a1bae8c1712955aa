package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.Scene;

/** Flatbed scans, each of a difficulty of its own. */
final class FlatbedSamples {

  private FlatbedSamples() {}

  /** In front of white no centre is sure enough to go unseen. */
  static Sample whiteLid() {
    SheetCode code = Studio.code(2, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            22,
            Volley.fieldPoints(3, Studio.AT_DOT, 14),
            Volley.broadheads(3, 2, 34, new MmVector(-18, -20), 14));
    Scene scene =
        Studio.scene(code, Behind.WHITE, Studio.SMOOTH, arrows, Studio.ticks("30", 3, 3), 202);
    FlatbedScan scanner =
        new FlatbedScan(150, false, 1, -2.1, scene.scale(), 0.45, 0.18, 1, 0.0004, 8, 202);
    Scene.Ready ready = scene.make(Studio.PIXELS_PER_MM);
    byte[] file = ScanFile.png(scanner.scan(ready.page(), ready.backdrop()), 150);
    return new Sample(file, scene.truth(ready.shots(), 150, false, true, "check"));
  }

  static Sample touching() {
    SheetCode code = Studio.code(3, 2, Variant.TWO_DOTS, Paper.A4);
    List<Arrow> arrows =
        new ArrayList<>(
            Studio.shots(
                code,
                32,
                Volley.fieldPoints(2, new MmVector(9, -4), 11),
                Volley.broadheads(2, 4, 29, new MmVector(18, 6), 16)));
    arrows.add(beside(arrows.get(0), new MmVector(6.9, 4.1)));
    arrows.add(beside(arrows.get(2), new MmVector(-5.2, 7.4)));
    return Studio.flatbed(
        Studio.scene(code, Behind.BLACK, Studio.CREAM, arrows, Studio.ticks("18", 3, 3), 302),
        200,
        true,
        3,
        1.1,
        "read");
  }

  private static Arrow beside(Arrow arrow, MmVector apart) {
    return new Arrow(
        arrow.axis().plus(apart), arrow.head(), arrow.blades(), arrow.cut(), arrow.aim());
  }

  static Sample offSize() {
    SheetCode code = Studio.code(4, 2, Variant.TWO_DOTS, Paper.A4);
    List<Arrow> arrows =
        Studio.shots(
            code,
            42,
            Volley.fieldPoints(3, Studio.AT_DOT, 10),
            Volley.broadheads(3, 2, 38, new MmVector(8, 19), 12));
    Scene whole =
        Studio.scene(code, Behind.BLACK, Studio.CREAM, arrows, Studio.ticks("30", 3, 3), 402);
    Scene small =
        new Scene(
            code,
            whole.behind(),
            whole.behindTone(),
            whole.look(),
            whole.shaft(),
            arrows,
            whole.ticks(),
            Decoys.ofPen(2, 2, 0),
            new PrintScale(0.966, 0.964),
            whole.seed());
    return Studio.flatbed(small, 200, false, 1, 3.2, "read");
  }

  static Sample fiveHoles() {
    SheetCode code = Studio.code(7, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            72,
            Volley.fieldPoints(3, Studio.AT_DOT, 9),
            Volley.broadheads(2, 3, 31, new MmVector(-14, 9), 9));
    return Studio.flatbed(
        Studio.scene(code, Behind.BACKING, Studio.PLAIN, arrows, Studio.ticks("25", 3, 3), 702),
        200,
        true,
        0,
        -0.7,
        "check");
  }

  static Sample mixedUp() {
    SheetCode code = Studio.code(8, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        new ArrayList<>(
            Studio.shots(
                code,
                82,
                Volley.fieldPoints(3, Studio.AT_DOT, 9),
                Volley.broadheads(3, 3, 31, new MmVector(-10, 7), 9)));
    Arrow first = arrows.get(0);
    arrows.set(0, new Arrow(first.axis(), Head.BROADHEAD, 3, 31, first.aim()));
    return Studio.flatbed(
        Studio.scene(code, Behind.BLACK, Studio.PLAIN, arrows, Studio.ticks("20", 3, 3), 802),
        200,
        false,
        0,
        1.9,
        "check");
  }
}
