package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.sheet.FlatSheet;

/** Finds the holes in a flat sheet: where each shaft went through, and with which head. */
public final class HoleReader {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** At first it is gathered as for a shaft of this radius. */
  private static final double FIRST_RADIUS = 3.2 * MM;

  /** How far from an opening's middle the axis may lie, in pixels. */
  private static final int REACH = 20;

  /** The same where only a disturbance is seen. */
  private static final int FAINT_REACH = 35;

  /** Holes nearer than this share of the shaft's diameter are one hole found twice. */
  private static final double SAME = 0.7;

  /** Holes that overlap are at least this share of the diameter apart, or are taken for one. */
  private static final double OVERLAP = 0.42;

  /** Pixels a millimetre (about 190 dpi) below which a hairline in front of white is lost. */
  private static final double SHOWS_HAIRLINES = 7.5;

  /** Log odds on a coarse grid below which a place is no hole: a finer look makes it a few more. */
  private static final double HOPELESS = -6;

  /** With the shaft's own radius, an opening's middle hardly ever moves farther, in pixels. */
  private static final int MOVE = 5;

  /** Pixels a millimetre (about 140 dpi) below which a rim in front of white is lost too. */
  private static final double SHOWS_RIMS = 5.5;

  /**
   * The true axis lies within so many of its spreads 19 times in 20, as measured on made scans. A
   * bell's would be 2.45; the odds were trained on targets that are themselves a little spread out.
   */
  private static final double WITHIN = 1.3;

  /** The same in front of white. */
  private static final double FAINT_WITHIN = 1.65;

  /** Slits are followed this far around a hole, in pixels. */
  private static final double AROUND = SlitTracer.REACH + 2 * MM;

  private final FlatSheet sheet;
  private final Surface surface;
  private final Seeds seeds;
  private final Map<Seeds.Seed, RimViews> views = new HashMap<>();
  private final List<Seeds.Seed> hopeful = new ArrayList<>();

  private HoleReader(FlatSheet sheet, Surface surface, Seeds seeds) {
    this.sheet = sheet;
    this.surface = surface;
    this.seeds = seeds;
  }

  /**
   * What was found on a sheet.
   *
   * @param found every hole, from the top of the page down
   * @param torn where paper is torn: ink there cannot be told from a tear
   * @param slits of those that a broadhead made
   * @param doubts what a person must look at
   */
  public record Holes(
      List<Hole> found, List<MmRect> torn, List<SlitLine> slits, List<Reason> doubts) {

    /** Of a sheet without holes. */
    public static final Holes NONE = new Holes(List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Holes {
      found = List.copyOf(found);
      torn = List.copyOf(torn);
      slits = List.copyOf(slits);
      doubts = List.copyOf(doubts);
    }

    private Holes withCoarseRims() {
      List<Reason> more = new ArrayList<>(doubts);
      more.add(
          Reason.of(
              ReasonCode.CENTRE_UNSURE,
              "The holes are pale and the picture is coarse, so their centres may be off: lay the backing behind the sheet, or scan at 200 dpi or more."));
      return new Holes(found, torn, slits, more);
    }
  }

  /**
   * Finds the holes; a sheet without a target has none.
   *
   * @param shot how many arrows of each head are ticked as shot
   */
  public static Holes read(FlatSheet sheet, Layout layout, ArrowsShot shot) {
    if (layout.target().isEmpty()) {
      return Holes.NONE;
    }
    Surface surface = Surface.of(sheet, layout);
    surface.seeBehind(Math.max(2, shot.all().orElse(0) / 2));
    try (Seeds seeds = Seeds.find(surface, shot)) {
      HoleReader reader = new HoleReader(sheet, surface, seeds);
      Holes holes =
          HoleJudge.judge(reader.circles(shot.all()), layout, shot, reader.losesHairlines());
      return reader.losesRims() && !holes.found().isEmpty() ? holes.withCoarseRims() : holes;
    }
  }

  /** In front of white, slits are hairlines of faint shading. */
  private boolean losesHairlines() {
    return seeds.kind() == Seeds.Kind.FAINT && sheet.sourcePixelsPerMm() < SHOWS_HAIRLINES;
  }

  private boolean losesRims() {
    return seeds.kind() == Seeds.Kind.FAINT && sheet.sourcePixelsPerMm() < SHOWS_RIMS;
  }

  private List<FoundHole> circles(OptionalInt shot) {
    OptionalInt radius = usualRadius();
    if (radius.isEmpty()) {
      return List.of();
    }
    int usual = radius.getAsInt();
    List<Candidate> candidates =
        hopeful.stream().map(seed -> candidate(fit(seed, usual), usual)).toList();
    List<Candidate> distinct = new ArrayList<>(distinct(candidates));
    distinct.removeIf(candidate -> candidate.evidence() < HoleJudge.POSSIBLE);
    if (shot.orElse(0) > distinct.size()) {
      addHiding(distinct, usual);
    }
    Map<FoundHole, ShaftFit> found = new LinkedHashMap<>();
    distinct.forEach(candidate -> found.put(found(candidate), candidate.fit()));
    return found.entrySet().stream()
        .map(hole -> withSlits(hole.getKey(), hole.getValue(), found.keySet()))
        .toList();
  }

  /** One hole may hide in the opening of another: in what the circles found leave open of it. */
  private void addHiding(List<Candidate> found, int radius) {
    try (Seeds rest = seeds.beside(found.stream().map(Candidate::circle).toList())) {
      for (Seeds.Seed seed : rest.places()) {
        Opening opening = Opening.of(rest, seed, radius);
        Candidate hiding =
            candidate(
                new ShaftFit(fresh(opening, REACH + ShaftFit.BEYOND), opening, REACH), radius);
        boolean apart =
            found.stream()
                .map(Candidate::circle)
                .allMatch(other -> other.distanceTo(hiding.circle()) >= OVERLAP * 2 * radius);
        if (apart && hiding.evidence() >= HoleJudge.POSSIBLE) {
          found.add(hiding);
        }
      }
    }
  }

  /**
   * One archer's arrows are alike, so the shaft's radius is the one that all likely holes together
   * make likeliest.
   */
  private OptionalInt usualRadius() {
    List<Candidate> candidates = new ArrayList<>();
    Map<Candidate, double[]> radii = new HashMap<>();
    for (Seeds.Seed seed : seeds.places()) {
      ShaftFit fit = fit(seed, FIRST_RADIUS);
      if (fit.roughOdds() < HOPELESS) {
        continue;
      }
      hopeful.add(seed);
      double[] logs = fit.radii(RimViews.LEAST_RADIUS, RimViews.MOST_RADIUS);
      Candidate candidate = candidate(fit, RimViews.LEAST_RADIUS + ShaftFit.highest(logs));
      candidates.add(candidate);
      radii.put(candidate, logs);
    }
    double[] sum = new double[RimViews.MOST_RADIUS - RimViews.LEAST_RADIUS + 1];
    List<Candidate> likely =
        distinct(candidates).stream().filter(c -> c.evidence() >= HoleJudge.SURE).toList();
    for (Candidate candidate : likely) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += radii.get(candidate)[i];
      }
    }
    return likely.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(RimViews.LEAST_RADIUS + ShaftFit.highest(sum));
  }

  private ShaftFit fit(Seeds.Seed seed, double radius) {
    Opening opening = Opening.of(seeds, seed, radius);
    int reach = seeds.kind() == Seeds.Kind.FAINT ? FAINT_REACH : REACH;
    return new ShaftFit(views(seed, opening, reach + ShaftFit.BEYOND), opening, reach);
  }

  /** What was seen around this place before, unless the opening's middle moved out of it. */
  private RimViews views(Seeds.Seed seed, Opening opening, int reach) {
    RimViews before = views.get(seed);
    if (before != null && before.reach(opening.x(), opening.y(), reach)) {
      return before;
    }
    RimViews fresh = fresh(opening, reach + MOVE);
    views.put(seed, fresh);
    return fresh;
  }

  private RimViews fresh(Opening opening, int reach) {
    return RimViews.around(surface, seeds.kind(), opening.x(), opening.y(), reach);
  }

  private static Candidate candidate(ShaftFit fit, int radius) {
    ShaftFit.Axis axis = fit.axis(radius);
    return new Candidate(
        fit,
        new Circle(axis.x(), axis.y(), radius),
        axis.spread(),
        1 / (1 + Math.exp(-axis.odds())));
  }

  /** A circle, how sure its place is, and how likely it is a hole, 0 to 1. */
  private record Candidate(ShaftFit fit, Circle circle, double spread, double evidence) {}

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
    Square around = Square.around(circle.x(), circle.y(), AROUND);
    Grid hiding = surface.hidingSlits(seeds.kind(), circle, AROUND);
    SlitView view = SlitView.of(surface, seeds.kind(), around, hiding);
    List<Slit> lines = view.tracer().trace(circle, HeadShape.SHORTEST);
    return new FoundHole(
        circle,
        error(candidate.spread()),
        candidate.evidence(),
        HeadShape.of(circle, lines),
        lines);
  }

  private double error(double spread) {
    return (seeds.kind() == Seeds.Kind.FAINT ? FAINT_WITHIN : WITHIN) * spread;
  }

  /** The slits of a broadhead, too, tell where its axis is. */
  private FoundHole withSlits(FoundHole hole, ShaftFit fit, Collection<FoundHole> all) {
    if (hole.shape().head() != Head.BROADHEAD) {
      return hole;
    }
    Circle rim = hole.circle();
    List<Heading> slits =
        hole.ownLines(all).stream()
            .filter(line -> line.length() - rim.radius() > HeadShape.FIELD * MM)
            .flatMap(line -> line.heading().stream())
            .toList();
    if (slits.isEmpty()) {
      return hole;
    }
    ShaftFit.Axis axis = fit.axis((int) rim.radius(), slits);
    Circle both = new Circle(axis.x(), axis.y(), rim.radius());
    List<Slit> seen = hole.lines().stream().map(line -> line.seenFrom(both, rim)).toList();
    return new FoundHole(both, error(axis.spread()), hole.evidence(), hole.shape(), seen);
  }
}
