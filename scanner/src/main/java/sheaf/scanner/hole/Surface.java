package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfDouble;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A flat sheet with light and paper tint taken out.
 *
 * @param darkness how much darker than the plain paper around, as a share of the paper's tone: 0 is
 *     paper, 1 black, below 0 brighter than paper; 32-bit
 * @param backing how surely a place shows the coloured backing, 0 to 1; 32-bit; empty for a grey
 *     picture
 * @param hidden 255 where the paper's tone says nothing, else 0; 8-bit
 * @param covered 255 where even a dark opening cannot be told, else 0; 8-bit
 * @param solid 255 inside thick print, else 0; 8-bit
 * @param target where holes are sought, in pixels
 * @param noise unevenness of the plain paper over a few pixels, as a share of its tone
 */
public record Surface(
    Mat darkness,
    Optional<Mat> backing,
    Mat hidden,
    Mat covered,
    Mat solid,
    Rect target,
    double noise)
    implements AutoCloseable {

  /** The paper's tone is sought on a picture reduced by this factor. */
  private static final int REDUCTION = 10;

  /**
   * Window of the median that is taken for the paper's tone, in reduced pixels (millimetres): more
   * than twice as wide as any hole or ring, so that paper has the majority.
   */
  private static final int WINDOW = 31;

  /** Backing colour less paper, in magenta: from here on it may be backing. */
  private static final double BACKING_FROM = 0.22;

  /** From here on it is backing; red pen reaches 0.35, printed backing 0.5 to 0.75. */
  private static final double BACKING_FULL = 0.45;

  /** Darker than the shadow inside a hole in front of something white. */
  private static final double INK = 0.42;

  /** A hole may lie this far outside the target, in millimetres. */
  private static final double AROUND_TARGET = 4;

  /** Ink's blurred edge is hidden too: a disc of this many pixels. */
  private static final int INK_AROUND = 9;

  /** Of a sheet that has a target. */
  public static Surface of(FlatSheet sheet, Layout layout) {
    KnownInk known = KnownInk.of(layout, sheet.grey().size());
    Mat darkness = darkness(sheet.grey());
    MmRect target = layout.target().orElseThrow();
    return new Surface(
        darkness,
        sheet.colour().map(Surface::backing),
        known.hidden(),
        known.covered(),
        known.solid(),
        sheet.pixels(target.grow(AROUND_TARGET)),
        noise(darkness, sheet.pixels(target)));
  }

  /** Hides thick print as well: what is seen through a hole is as dark as print. */
  void hidePrint() {
    Core.bitwise_or(hidden, solid, hidden);
  }

  /** Hides what is darker than any shading: where nothing dark lies behind, that is a pen's ink. */
  void hideWriting() {
    try (Mats mats = new Mats()) {
      Mat ink = mats.mat();
      Core.compare(darkness, new Scalar(INK), ink, Core.CMP_GT);
      Size around = new Size(INK_AROUND, INK_AROUND);
      Mat disc = mats.own(Imgproc.getStructuringElement(Imgproc.MORPH_ELLIPSE, around));
      Imgproc.dilate(ink, ink, disc);
      Mat paper = mats.mat();
      Core.bitwise_not(solid, paper);
      Core.bitwise_and(ink, paper, ink);
      Core.bitwise_or(hidden, ink, hidden);
    }
  }

  /** Takes the print's own tone out of the darkness, so that a hole through print stands out. */
  void subtractPrint() {
    if (Core.countNonZero(solid) > 0) {
      Scalar tone = Core.mean(darkness, solid);
      Core.subtract(darkness, tone, darkness, solid);
    }
  }

  private static Mat darkness(Mat grey) {
    try (Mats mats = new Mats()) {
      Mat bright = brightness(grey, mats);
      Mat darkness = new Mat();
      bright.convertTo(darkness, -1, -1, 1);
      return darkness;
    }
  }

  /** Unevenness of plain paper over a few pixels, as a share of its tone. */
  private static double noise(Mat darkness, Rect target) {
    try (Mats mats = new Mats()) {
      Mat part = mats.own(darkness.submat(target));
      Mat smooth = mats.mat();
      Imgproc.blur(part, smooth, new Size(5, 5));
      Mat rest = mats.mat();
      Core.absdiff(part, smooth, rest);
      // The mean absolute value of bell-shaped noise is 0.8 of its standard deviation; a ceiling
      // keeps print and holes out of it.
      Core.min(rest, new Scalar(0.05), rest);
      MatOfDouble mean = mats.own(new MatOfDouble());
      MatOfDouble deviation = mats.own(new MatOfDouble());
      Core.meanStdDev(rest, mean, deviation);
      return mean.toArray()[0] / 0.8;
    }
  }

  /** One channel divided by the paper's tone around: 1 is paper. */
  private static Mat brightness(Mat channel, Mats mats) {
    Mat small = mats.mat();
    double scale = 1.0 / REDUCTION;
    Imgproc.resize(channel, small, new Size(), scale, scale, Imgproc.INTER_AREA);
    Mat median = mats.mat();
    Imgproc.medianBlur(small, median, WINDOW);
    Mat tone = mats.mat();
    Imgproc.resize(median, tone, channel.size(), 0, 0, Imgproc.INTER_LINEAR);
    // Around a photographed sheet it may be black, and nothing divided by nothing is not a number.
    Core.max(tone, new Scalar(1), tone);
    Mat one = mats.mat();
    Core.divide(channel, tone, one, 1, CvType.CV_32F);
    return one;
  }

  /** Magenta is what green light does not come back from: red and blue less green. */
  private static Mat backing(Mat colour) {
    try (Mats mats = new Mats()) {
      List<Mat> channels = new ArrayList<>();
      Core.split(colour, channels);
      channels.forEach(mats::own);
      Mat blue = brightness(channels.get(0), mats);
      Mat green = brightness(channels.get(1), mats);
      Mat red = brightness(channels.get(2), mats);
      Mat magenta = mats.mat();
      Core.addWeighted(red, 0.5, blue, 0.5, 0, magenta);
      Core.subtract(magenta, green, magenta);
      double gain = 1 / (BACKING_FULL - BACKING_FROM);
      Mat share = new Mat();
      magenta.convertTo(share, -1, gain, -BACKING_FROM * gain);
      Core.max(share, new Scalar(0), share);
      Core.min(share, new Scalar(1), share);
      return share;
    }
  }

  @Override
  public void close() {
    darkness.release();
    backing.ifPresent(Mat::release);
    hidden.release();
    covered.release();
    solid.release();
  }
}
