package sheaf.samples;

import java.util.List;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.samples.scan.Bend;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.Lens;
import sheaf.samples.scan.Lighting;
import sheaf.samples.scan.PaperShape;
import sheaf.samples.scan.PhonePhoto;
import sheaf.samples.scan.Pose;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/** What the speed of reading is measured with: letter pair sheets with six holes, as JPEG. */
final class SpeedSheets {

  private static final int DPI = 300;
  private static final double SKEW = 1.3;
  private static final int QUALITY = 80;

  private SpeedSheets() {}

  /** A flatbed scan at 300 dpi. */
  static byte[] scan(Behind behind, boolean colour) {
    Scene scene = scene(behind);
    FlatbedScan scanner =
        new FlatbedScan(
            DPI, colour, 0, SKEW, scene.scale(), 0.5, 1.0, 1.03, 0.0006, 12, scene.seed());
    Scene.Ready ready = scene.make(Studio.PIXELS_PER_MM);
    return ScanFile.jpeg(scanner.scan(ready.page(), ready.backdrop()), QUALITY, DPI);
  }

  /** A photo of twelve million pixels, taken a little askew. */
  static byte[] photo(Behind behind) {
    Scene scene = scene(behind);
    Pose pose = new Pose(12, 250, -4, 0.93, 2, 0);
    Lighting indoors = new Lighting(-0.2, 0.1, 0.25, 0, 0, 0, 0, 1, 0.1, 0, 1, 0);
    PhonePhoto camera =
        new PhonePhoto(
            3000,
            4000,
            1,
            pose,
            new Lens(0.75, 0.015, 0),
            PaperShape.of(Bend.arch(0, Paper.LETTER.width(), 1.5)),
            indoors,
            scene.scale(),
            0.8,
            0.5,
            2,
            0.3,
            scene.seed());
    Scene.Ready ready = scene.make(Studio.PIXELS_PER_MM);
    return ScanFile.photo(camera.take(ready.page(), ready.backdrop()), QUALITY, 1);
  }

  private static Scene scene(Behind behind) {
    SheetCode code = Studio.code(11, 2, Variant.TWO_DOTS, Paper.LETTER);
    List<Arrow> arrows =
        Studio.shots(
            code,
            112,
            Volley.fieldPoints(3, Studio.AT_DOT, 9),
            Volley.broadheads(3, 3, 31, new MmVector(-18, 12), 10));
    return Studio.scene(code, behind, Studio.PLAIN, arrows, Studio.ticks("20", 3, 3), 1102);
  }
}
