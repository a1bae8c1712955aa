package sheaf.samples;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.samples.scan.PhonePhoto;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.Pixel;
import sheaf.scanner.sheet.SheetInPicture;

/**
 * Measures how well made photos are flattened, holes left aside: {@code Flatness FIRST-SEED
 * LAST-SEED}. Where the camera truly saw each place of the target is held against where the reader
 * takes it from.
 */
public final class Flatness {

  /** Places along each side of the target. */
  private static final int ALONG = 12;

  /** A step on the page, in millimetres, that tells how the picture changes there. */
  private static final double STEP = 0.5;

  private Flatness() {}

  /**
   * How far a photo's target was off.
   *
   * @param rms over the target, in millimetres on the page
   * @param worst place
   * @param linesWithin what the reader itself says of it
   */
  public record Off(double rms, double worst, OptionalDouble linesWithin) {}

  /** Runs the measurement over a range of seeds. */
  public static void main(String[] arguments) {
    PrintStream out = Terminal.out();
    if (arguments.length != 2) {
      out.println("usage: Flatness FIRST-SEED LAST-SEED");
      return;
    }
    List<Off> all = new ArrayList<>();
    for (long seed = Long.parseLong(arguments[0]); seed <= Long.parseLong(arguments[1]); seed++) {
      PhotoMix.Shoot shoot = PhotoMix.draw(seed);
      try {
        Off off = of(shoot, shoot.take().file());
        all.add(off);
        out.printf(
            Locale.ROOT,
            "seed %d: %.3f mm, worst %.3f; lines within %.2f%n",
            seed,
            off.rms(),
            off.worst(),
            off.linesWithin().orElse(Double.NaN));
      } catch (UnreadableException e) {
        out.println("seed " + seed + ": " + e.reason().message());
      }
    }
    double mean = all.stream().mapToDouble(off -> off.rms() * off.rms()).average().orElse(0);
    out.printf(Locale.ROOT, "%d photos: RMS %.3f mm%n", all.size(), Math.sqrt(mean));
  }

  /** Flattens a photo and says how far off its target is. */
  public static Off of(PhotoMix.Shoot shoot, byte[] photo) throws UnreadableException {
    NativeLibraries.load();
    try (PictureFile file = PictureFile.open(photo);
        Picture picture = file.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      MmRect target =
          Layouts.find(shoot.scene().code().layout()).orElseThrow().target().orElseThrow();
      double sum = 0;
      double worst = 0;
      for (int i = 0; i < ALONG * ALONG; i++) {
        double x = target.x() + target.width() * (i % ALONG) / (ALONG - 1);
        double y = target.y() + target.height() * (i / ALONG) / (ALONG - 1);
        double off = off(shoot, sheet, new MmPoint(x, y));
        sum += off * off;
        worst = Math.max(worst, off);
      }
      return new Off(Math.sqrt(sum / (ALONG * ALONG)), worst, sheet.offLines());
    }
  }

  /** How far off one place is, in millimetres on the page. */
  private static double off(PhotoMix.Shoot shoot, SheetInPicture sheet, MmPoint place) {
    PhonePhoto camera = shoot.camera();
    Paper paper = shoot.scene().code().layout().paper();
    double[] here = camera.seen(place, paper);
    double[] right = camera.seen(new MmPoint(place.x() + STEP, place.y()), paper);
    double[] down = camera.seen(new MmPoint(place.x(), place.y() + STEP), paper);
    Pixel taken = sheet.inPicture(place);
    double dx = taken.x() - here[0];
    double dy = taken.y() - here[1];
    double a = (right[0] - here[0]) / STEP;
    double b = (down[0] - here[0]) / STEP;
    double c = (right[1] - here[1]) / STEP;
    double d = (down[1] - here[1]) / STEP;
    double determinant = a * d - b * c;
    return Math.hypot(d * dx - b * dy, a * dy - c * dx) / Math.abs(determinant);
  }
}
