package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfDouble;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/** Finds the holes in a flat sheet: where each shaft went through, and with which head. */
public final class HoleReader {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Shafts are 4.5 to 10 mm thick. */
  private static final double LEAST_RADIUS = 2.25 * MM;

  private static final double MOST_RADIUS = 5 * MM;

  /** A seed may lie this far off the axis. */
  private static final double SEED_REACH = 2.8 * MM;

  /** With the shaft's radius known, it may still come out this much different, in pixels. */
  private static final double RADIUS_LEEWAY = 1.5;

  /** Holes nearer than this share of the shaft's diameter are one hole found twice. */
  private static final double SAME = 0.7;

  /** A hole may lie this far outside the target and still be found where holes are faint. */
  private static final double AROUND_TARGET = 4;

  /** Contrast of an edge that counts fully, where what lies behind is dark, and where it is not. */
  private static final double DARK_EDGE = 0.22;

  private static final double FAINT_EDGE = 0.06;

  private final Surface surface;
  private final Seeds seeds;
  private final double noise;

  private HoleReader(Surface surface, Seeds seeds, double noise) {
    this.surface = surface;
    this.seeds = seeds;
    this.noise = noise;
  }

  /**
   * What was found on a sheet.
   *
   * @param found every hole, from the top of the page down
   * @param doubts what a person must look at
   */
  public record Holes(List<Hole> found, List<Reason> doubts) {
    /** Copies the lists. */
    public Holes {
      found = List.copyOf(found);
      doubts = List.copyOf(doubts);
    }
  }

  /**
   * Finds the holes; a sheet without a target has none.
   *
   * @param scale how large the sheet was printed, where known
   */
  public static Holes read(FlatSheet sheet, Layout layout, Optional<PrintScale> scale) {
    if (layout.target().isEmpty()) {
      return new Holes(List.of(), List.of());
    }
    MmRect target = layout.target().get().grow(AROUND_TARGET);
    try (Surface surface = Surface.of(sheet, layout)) {
      double noise = noise(surface.darkness(), sheet.pixels(layout.target().get()));
      Seeds seeds = Seeds.find(surface, sheet.pixels(target), noise);
      HoleReader reader = new HoleReader(surface, seeds, noise);
      return HoleJudge.judge(reader.circles(), layout, seeds.kind());
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

  private List<FoundHole> circles() {
    List<Circle> first = new ArrayList<>();
    for (Seeds.Seed seed : seeds.places()) {
      first.add(fit(seed.x(), seed.y(), SEED_REACH, LEAST_RADIUS, MOST_RADIUS));
    }
    List<Circle> plausible = distinct(first, HoleJudge.PLAUSIBLE);
    if (plausible.isEmpty()) {
      return List.of();
    }
    double radius = usualRadius(plausible);
    List<Circle> again = new ArrayList<>();
    for (Seeds.Seed seed : seeds.places()) {
      again.add(
          fit(seed.x(), seed.y(), SEED_REACH, radius - RADIUS_LEEWAY, radius + RADIUS_LEEWAY));
    }
    return distinct(again, HoleJudge.POSSIBLE).stream().map(this::found).toList();
  }

  private Circle fit(double x, double y, double reach, double least, double most) {
    double around = reach + most + 2 * MM;
    RimFit fit =
        new RimFit(
            Grid.around(surface.darkness(), x, y, around),
            Grid.around(surface.known(), x, y, around),
            seeds.kind() == Seeds.Kind.FAINT ? FAINT_EDGE : DARK_EDGE,
            least,
            most);
    return fit.search(x, y, reach);
  }

  /** One circle for each hole: of those that cover each other, the best. */
  private static List<Circle> distinct(List<Circle> circles, double least) {
    List<Circle> sorted =
        circles.stream()
            .filter(circle -> circle.score() >= least)
            .sorted(Comparator.comparingDouble(Circle::score).reversed())
            .toList();
    List<Circle> distinct = new ArrayList<>();
    for (Circle circle : sorted) {
      boolean covered =
          distinct.stream().anyMatch(other -> circle.distanceTo(other) < SAME * 2 * other.radius());
      if (!covered) {
        distinct.add(circle);
      }
    }
    return distinct;
  }

  /** One archer's arrows are alike, so the median of what the holes say is the shaft's radius. */
  private static double usualRadius(List<Circle> circles) {
    List<Double> radii = circles.stream().map(Circle::radius).sorted().toList();
    int middle = radii.size() / 2;
    return radii.size() % 2 == 1
        ? radii.get(middle)
        : (radii.get(middle - 1) + radii.get(middle)) / 2;
  }

  private FoundHole found(Circle circle) {
    double reach = SlitTracer.REACH + 2 * MM;
    SlitTracer tracer =
        new SlitTracer(
            Grid.around(surface.darkness(), circle.x(), circle.y(), reach),
            Grid.around(surface.known(), circle.x(), circle.y(), reach),
            seeds.kind() == Seeds.Kind.FAINT ? Math.max(0.02, 2.5 * noise) : 0.08);
    return new FoundHole(circle, HeadShape.of(circle, tracer.trace(circle, HeadShape.SHORTEST)));
  }
}
