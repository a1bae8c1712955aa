package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Layout;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Reason;
import sheaf.core.reading.TearReading;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.sheet.FlatSheet;

/** Finds the tears in the zones of a tear sheet. */
public final class TearReader {

  /** Shafts are 4.8 to 10.4 mm thick; their radii are tried in these steps, in millimetres. */
  private static final double THINNEST = 2.4;

  private static final double THICKEST = 5.2;

  private static final double STEP = 0.2;

  /** So many of a zone's largest spots are taken for the beginning of a tear. */
  private static final int MOST_STARTS = 3;

  /** A spot's middle lies at most this far from that of its tear, in millimetres. */
  private static final double ASTRAY = 5;

  /** Flaps lie and paper is bent so far beside a tear, in millimetres. */
  private static final double BESIDE = 2.5;

  /** The radius to begin with. */
  private static final double USUAL = 3.1;

  private final Surface surface;
  private final Seeds.Kind kind;
  private final TornMap map;
  private final TearFit fit;

  private TearReader(Surface surface, Seeds.Kind kind) {
    this.surface = surface;
    this.kind = kind;
    this.map = TornMap.of(surface, kind);
    this.fit = new TearFit(map, kind);
  }

  /**
   * What was found on a sheet.
   *
   * @param found at most one tear for each zone, by zone
   * @param torn their surroundings, in which ink cannot be told from torn paper
   * @param doubts what a person must look at
   */
  public record Tears(List<TearReading> found, List<MmRect> torn, List<Reason> doubts) {

    /** A sheet without zones. */
    public static final Tears NONE = new Tears(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Tears {
      found = List.copyOf(found);
      torn = List.copyOf(torn);
      doubts = List.copyOf(doubts);
    }
  }

  /** Whether a sheet is one of tears. */
  public static boolean reads(Layout layout) {
    return layout.id().kind() == SheetKind.TEAR;
  }

  /** Finds the tears of a tear sheet. */
  public static Tears read(FlatSheet sheet, Layout layout) {
    Surface surface = Surface.of(sheet, layout);
    try (Seeds seeds = Seeds.find(surface, ArrowsShot.of(List.of(), layout))) {
      TearReader reader = new TearReader(surface, seeds.kind());
      List<TornSpots.Spot> spots =
          TornSpots.in(layout.target().orElseThrow(), reader.map, seeds.kind());
      List<Spotted> spotted =
          layout.zones().stream().map(zone -> reader.spotted(zone, layout.zones(), spots)).toList();
      double radius = reader.radius(spotted);
      return TearJudge.judge(spotted.stream().map(zone -> reader.found(zone, radius)).toList());
    }
  }

  /**
   * A zone in which something is torn.
   *
   * @param rough the likeliest tear; empty when nothing is torn
   */
  private record Spotted(Zone zone, List<TornSpots.Spot> spots, Optional<Capsule> rough) {}

  private Spotted spotted(Zone zone, List<Zone> all, List<TornSpots.Spot> sheet) {
    List<TornSpots.Spot> spots = sheet.stream().filter(spot -> spot.isOf(zone, all)).toList();
    List<Capsule> starts = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST_STARTS, spots.size()); i++) {
      starts.add(spots.get(i).along(USUAL));
      if (i > 0) {
        starts.add(spots.get(0).with(spots.get(i)).along(USUAL));
      }
    }
    Optional<Capsule> rough =
        starts.stream()
            .map(fit::settled)
            .filter(tear -> isOf(zone, tear, all))
            .max(Comparator.comparingDouble(fit::score));
    return new Spotted(zone, spots, rough);
  }

  /** How much speaks for a tear where a spot is; 0 when it only leads to another place. */
  private static double inPlace(Capsule spot, TearFit rest) {
    Capsule settled = rest.settled(spot);
    double right = settled.pointX() + settled.tailX() - spot.pointX() - spot.tailX();
    double down = settled.pointY() + settled.tailY() - spot.pointY() - spot.tailY();
    return Math.hypot(right, down) / 2 < ASTRAY ? rest.score(settled) : 0;
  }

  /** Whether a tear's middle lies nearer to a zone than to any other. */
  private static boolean isOf(Zone zone, Capsule tear, List<Zone> all) {
    double[] middle = {(tear.pointX() + tear.tailX()) / 2, (tear.pointY() + tear.tailY()) / 2};
    return new TornSpots.Spot(new double[] {middle[0]}, new double[] {middle[1]}).isOf(zone, all);
  }

  /** One archer's arrows are alike: the radius that all tears together make likeliest. */
  private double radius(List<Spotted> zones) {
    double best = USUAL;
    double highest = Double.NEGATIVE_INFINITY;
    for (double radius = THINNEST; radius <= THICKEST; radius += STEP) {
      double tried = radius;
      double sum =
          zones.stream()
              .flatMap(zone -> zone.rough().stream())
              .mapToDouble(tear -> fit.score(tear.with(tried)))
              .sum();
      if (sum > highest) {
        highest = sum;
        best = radius;
      }
    }
    return best;
  }

  private FoundTear found(Spotted zone, double radius) {
    if (zone.rough().isEmpty()) {
      return FoundTear.nothing(zone.zone());
    }
    Capsule tear = fit.settled(zone.rough().get().with(radius));
    FoundTear found = new EndFinder(map, TearView.of(surface, kind, tear)).find(zone.zone(), tear);
    return found.with(Unexplained.by(found, zone.spots(), second(found, zone.spots())));
  }

  /** How much speaks for another tear, in a spot of its own, when the first is taken away. */
  private double second(FoundTear found, List<TornSpots.Spot> spots) {
    Capsule tear = found.capsule();
    TornMap slitless = EndFinder.without(map, tear, found.star().slits());
    TornMap left =
        slitless.without(
            tear.pointX(), tear.pointY(), tear.tailX(), tear.tailY(), tear.radius() + BESIDE);
    TearFit rest = new TearFit(left, kind);
    return Unexplained.spots(found, spots).stream()
        .mapToDouble(spot -> inPlace(spot.along(tear.radius()), rest))
        .max()
        .orElse(0);
  }
}
