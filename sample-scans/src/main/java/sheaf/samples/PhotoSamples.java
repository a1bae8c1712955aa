package sheaf.samples;

import java.util.List;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.samples.scan.Bend;
import sheaf.samples.scan.Lighting;
import sheaf.samples.scan.PaperShape;
import sheaf.samples.scan.Pose;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.Scene;

/** Phone photos. */
final class PhotoSamples {

  private PhotoSamples() {}

  static Sample tiltedPhoto() {
    SheetCode code = Studio.code(5, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            52,
            Volley.fieldPoints(3, Studio.AT_DOT, 13),
            Volley.broadheads(3, 3, 30, new MmVector(16, -9), 13));
    Scene scene =
        Studio.scene(code, Behind.FOAM, Studio.BENT, arrows, Studio.ticks("20", 3, 3), 502)
            .with(Decoys.ofPen(1, 1, 0).pinned());
    Pose pose = new Pose(19, 40, 4, 0.94, 0, 3);
    Lighting sun = new Lighting(0.15, -0.1, 0.2, 0, 0.42, 2.5, 15, 5, 0.06, 0, 1, 0);
    return Studio.photo(
        scene,
        Studio.camera(6, pose, sun, PaperShape.of(Bend.arch(0, 215.9, 2.5)), 502),
        78,
        "read");
  }

  static Sample backingPhoto() {
    SheetCode code = Studio.code(6, 3, Variant.SHARED_DOT, Paper.A4);
    List<Arrow> arrows =
        Studio.shots(
            code,
            62,
            Volley.fieldPoints(3, new MmVector(-20, 11), 9),
            Volley.broadheads(3, 4, 27, new MmVector(19, -12), 11));
    Scene scene =
        Studio.scene(code, Behind.BACKING, Studio.CREAM, arrows, Studio.ticks("18", 3, 3), 602)
            .with(Decoys.ofPen(0, 1, 1));
    Pose pose = new Pose(11, 250, -7, 0.93, 2, 0);
    Lighting indoors = new Lighting(-0.2, 0.1, 0.25, 0, 0, 0, 0, 1, 0.1, 0.02, 0.97, 0);
    return Studio.photo(
        scene,
        Studio.camera(1, pose, indoors, PaperShape.of(Bend.curl(90, 0, 148, 6)), 602),
        80,
        "read");
  }

  /** So near that only one mark is in the picture as a whole. */
  static Sample halfSheet() {
    SheetCode code = Studio.code(9, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            92,
            Volley.fieldPoints(3, Studio.AT_DOT, 10),
            Volley.broadheads(3, 3, 31, new MmVector(12, 10), 10));
    Scene scene =
        Studio.scene(code, Behind.WOOD, Studio.PLAIN, arrows, Studio.ticks("20", 3, 3), 902)
            .with(Decoys.NONE.pinned());
    Pose pose = new Pose(8, 120, 2, 2.6, 0, -95);
    Lighting indoors = new Lighting(0.1, 0.1, 0.2, 0, 0, 0, 0, 1, 0.08, 0, 1, 0);
    return Studio.photo(
        scene, Studio.camera(6, pose, indoors, PaperShape.FLAT, 902), 75, "refused");
  }
}
