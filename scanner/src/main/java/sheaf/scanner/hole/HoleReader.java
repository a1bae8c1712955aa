package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
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
import sheaf.core.reading.Reason;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/** Finds the holes in a flat sheet: where each shaft went through, and with which head. */
public final class HoleReader {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Shafts are 4.5 to 10 mm thick. */
  private static final double LEAST_RADIUS = 2.25 * MM;

  private static final double MOST_RADIUS = 5 * MM;

  /** What is open is first gathered as for a shaft of this radius. */
  private static final double GATHER = 3.2 * MM;

  /** With the shaft's radius known, it may still come out this much different, in pixels. */
  private static final double RADIUS_LEEWAY = 1.5;

  /**
   * Openings end at this share of the shaft's radius in most directions; measured on torn holes.
   */
  private static final double REACH_SHARE = 0.86;

  /** Holes nearer than this share of the shaft's diameter are one hole found twice. */
  private static final double SAME = 0.7;

  /** A hole may lie this far outside the target and still be found where holes are faint. */
  private static final double AROUND_TARGET = 4;

  /** Share of the shaft's disc that must be open: torn holes keep at least a third. */
  private static final double LEAST_SHARE = 0.1;

  /** Share of a disc that must be free of print to judge the shaft's size by it. */
  private static final double MOSTLY = 0.85;

  /** A hole that is open by this share of its disc, or more, is as open as torn holes get. */
  private static final double WELL_OPEN = 0.4;

  /** Pixels a millimetre (about 190 dpi) below which a hairline in front of white is lost. */
  private static final double SHOWS_HAIRLINES = 7.5;

  /** Where openings are faint: what a disc that is all unlike paper is worth beside a whole rim. */
  private static final double INSIDE_WORTH = 0.6;

  /** What the backing's colour is worth as evidence. */
  private static final double COLOUR_ALONE = 0.1;

  private static final double NEAR = 1.0 * MM;
  private static final double FAR = 2.4 * MM;

  /** For the shaft's size the rim alone counts: a small disc is always the most unlike paper. */
  private static final RimFit.Manner RIM_ALONE = new RimFit.Manner(0.15, FAR, 0.08, false, 0);

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
   * @param shot how many arrows of each head are ticked as shot
   */
  public static Holes read(FlatSheet sheet, Layout layout, ArrowsShot shot) {
    if (layout.target().isEmpty()) {
      return new Holes(List.of(), List.of());
    }
    MmRect target = layout.target().get().grow(AROUND_TARGET);
    try (Surface surface = Surface.of(sheet, layout)) {
      double noise = noise(surface.darkness(), sheet.pixels(layout.target().get()));
      try (Seeds seeds = Seeds.find(surface, sheet.pixels(target), shot, noise)) {
        HoleReader reader = new HoleReader(surface, seeds, noise);
        return HoleJudge.judge(reader.circles(), layout, shot, reader.view(sheet));
      }
    }
  }

  /** In front of white, rims are faint, and slits are hairlines of faint shading. */
  private HoleJudge.View view(FlatSheet sheet) {
    if (seeds.kind() != Seeds.Kind.FAINT) {
      return HoleJudge.View.CLEAR;
    }
    return sheet.sourcePixelsPerMm() >= SHOWS_HAIRLINES
        ? HoleJudge.View.FAINT
        : HoleJudge.View.FAINT_AND_COARSE;
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
    List<Opening> openings =
        seeds.places().stream()
            .map(seed -> Opening.near(seeds, seed.x(), seed.y(), GATHER * 1.15))
            .toList();
    OptionalDouble radius = usualRadius(openings);
    if (radius.isEmpty()) {
      return List.of();
    }
    double usual = radius.getAsDouble();
    List<Candidate> candidates = new ArrayList<>();
    for (Seeds.Seed seed : seeds.places()) {
      Opening opening = Opening.near(seeds, seed.x(), seed.y(), usual * 1.15);
      if (seeds.kind() == Seeds.Kind.FAINT || opening.share() >= LEAST_SHARE) {
        Circle circle = fit(opening, manner(), usual - RADIUS_LEEWAY, usual + RADIUS_LEEWAY);
        candidates.add(new Candidate(circle, evidence(circle, opening)));
      }
    }
    return distinct(candidates).stream()
        .filter(candidate -> candidate.evidence() >= HoleJudge.POSSIBLE)
        .map(this::found)
        .toList();
  }

  /**
   * Where openings are plain to see, their size counts as much as their rim; the backing's colour,
   * which nothing else on a sheet has, counts by itself.
   */
  private double evidence(Circle circle, Opening opening) {
    if (seeds.kind() == Seeds.Kind.FAINT) {
      return circle.score() / (1 + INSIDE_WORTH / 2);
    }
    double seen = (Math.max(0, circle.score()) + Math.min(1, opening.share() / WELL_OPEN)) / 2;
    return seeds.kind() == Seeds.Kind.COLOURED ? seen + COLOUR_ALONE : seen;
  }

  /**
   * One archer's arrows are alike, so the median of what the holes say is the shaft's radius: how
   * far the openings reach, or where openings are faint, which circle their rims fit best.
   */
  private OptionalDouble usualRadius(List<Opening> openings) {
    List<Double> radii;
    if (seeds.kind() == Seeds.Kind.FAINT) {
      List<Circle> circles =
          openings.stream()
              .map(opening -> fit(opening, RIM_ALONE, LEAST_RADIUS, MOST_RADIUS))
              .toList();
      radii =
          distinct(circles.stream().map(c -> new Candidate(c, c.score())).toList()).stream()
              .filter(candidate -> candidate.evidence() >= HoleJudge.CLEAR_RIM)
              .map(candidate -> candidate.circle().radius())
              .toList();
    } else {
      radii =
          openings.stream()
              .filter(opening -> opening.seen() > MOSTLY && opening.share() >= LEAST_SHARE)
              .map(opening -> opening.reach() / REACH_SHARE)
              .toList();
    }
    List<Double> sorted = radii.stream().sorted().toList();
    return sorted.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Math.max(LEAST_RADIUS, Math.min(MOST_RADIUS, sorted.get(sorted.size() / 2))));
  }

  private Circle fit(Opening opening, RimFit.Manner manner, double least, double most) {
    double x = opening.x();
    double y = opening.y();
    double around = manner.reach() + most + 2 * MM;
    boolean coloured = seeds.kind() == Seeds.Kind.COLOURED;
    Mat tone = coloured ? surface.backing().orElseThrow() : surface.darkness();
    RimFit fit =
        new RimFit(
            Grid.around(tone, x, y, around),
            Grid.around(surface.hidden(), x, y, coloured ? 1 : around),
            manner,
            least,
            most);
    return fit.search(x, y);
  }

  private RimFit.Manner manner() {
    return switch (seeds.kind()) {
      case COLOURED -> new RimFit.Manner(0.4, NEAR, 0.25, true, 0);
      case DARK -> new RimFit.Manner(0.3, NEAR, 0.12, true, 0);
      case FAINT -> new RimFit.Manner(0.18, FAR, 0.08, false, INSIDE_WORTH);
    };
  }

  /** A circle, and how much speaks for it being a hole, 0 to 1. */
  private record Candidate(Circle circle, double evidence) {}

  /** One circle for each hole: of those that cover each other, the best. */
  private static List<Candidate> distinct(List<Candidate> candidates) {
    List<Candidate> sorted =
        candidates.stream()
            .sorted(Comparator.comparingDouble(Candidate::evidence).reversed())
            .toList();
    List<Candidate> distinct = new ArrayList<>();
    for (Candidate one : sorted) {
      boolean covered =
          distinct.stream()
              .map(Candidate::circle)
              .anyMatch(other -> one.circle().distanceTo(other) < SAME * 2 * other.radius());
      if (!covered) {
        distinct.add(one);
      }
    }
    return distinct;
  }

  private FoundHole found(Candidate candidate) {
    Circle circle = candidate.circle();
    double reach = SlitTracer.REACH + 2 * MM;
    SlitTracer tracer =
        new SlitTracer(
            Grid.around(surface.darkness(), circle.x(), circle.y(), reach),
            Grid.around(surface.hidden(), circle.x(), circle.y(), reach),
            seeds.kind() == Seeds.Kind.FAINT ? Math.max(0.03, 3 * noise) : 0.08);
    return new FoundHole(
        circle,
        candidate.evidence(),
        HeadShape.of(circle, tracer.trace(circle, HeadShape.SHORTEST)));
  }
}
