package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Layout;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmRect;
import sheaf.core.reading.FieldReading;
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

  /** Flaps lie and paper is bent so far beside a tear, in millimetres. */
  private static final double BESIDE = 2.5;

  /** The radius to begin with. */
  private static final double USUAL = 3.1;

  /** A spot's middle lies at most this far from that of its tear, in millimetres. */
  private static final double ASTRAY = 5;

  /** Pairs of ends that speak for less do not tell how thick the shaft is. */
  private static final double TELLS = 0;

  private final Surface surface;
  private final Seeds.Kind kind;
  private final TornMap map;
  private final TearFit fit;
  private final Layout layout;

  private TearReader(Surface surface, Seeds.Kind kind, Layout layout) {
    this.surface = surface;
    this.kind = kind;
    this.map = TornMap.of(surface, kind);
    this.fit = new TearFit(map, kind);
    this.layout = layout;
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

  /**
   * Finds the tears of a tear sheet.
   *
   * @param ticks what is ticked on it: before which shots something was changed
   */
  public static Tears read(FlatSheet sheet, Layout layout, List<FieldReading> ticks) {
    Surface surface = Surface.of(sheet, layout);
    EndMap said = EndNet.look(TearPicture.of(sheet, layout));
    try (Seeds seeds = Seeds.find(surface, ArrowsShot.of(List.of(), layout))) {
      TearReader reader = new TearReader(surface, seeds.kind(), layout);
      return TearJudge.judge(reader.looks(said), ZonesShot.of(ticks, layout));
    }
  }

  /**
   * What may be torn in a zone.
   *
   * @param spots that are surely no plain paper
   * @param tails that the net saw
   * @param points the same
   */
  private record Spotted(
      Zone zone, List<TornSpots.Spot> spots, List<EndMap.End> tails, List<EndMap.End> points) {

    boolean hasPairs() {
      return !tails.isEmpty() && !points.isEmpty();
    }
  }

  private List<ZoneLook> looks(EndMap said) {
    List<EndMap.End> tails = said.ends(EndMap.Sort.TAIL);
    List<EndMap.End> points = said.ends(EndMap.Sort.POINT);
    List<TornSpots.Spot> spots = TornSpots.in(layout.target().orElseThrow(), map, kind);
    List<Spotted> zones =
        layout.zones().stream()
            .map(
                zone ->
                    new Spotted(
                        zone,
                        spots.stream().filter(spot -> spot.isOf(zone, layout.zones())).toList(),
                        within(zone, tails),
                        within(zone, points)))
            .toList();
    double radius = radius(zones);
    return zones.stream().map(zone -> look(zone, radius)).toList();
  }

  private List<EndMap.End> within(Zone zone, List<EndMap.End> ends) {
    return ends.stream()
        .filter(end -> TornSpots.Spot.at(end.x(), end.y()).isOf(zone, layout.zones()))
        .toList();
  }

  /** One archer's arrows are alike: the radius that all tears together make likeliest. */
  private double radius(List<Spotted> zones) {
    List<Capsule> rough = new ArrayList<>();
    for (Spotted zone : zones) {
      if (zone.hasPairs()) {
        EndChoice first = EndChoice.all(zone.tails(), zone.points(), USUAL, fit).get(0);
        if (first.worth() > TELLS) {
          rough.add(first.capsule());
        }
      }
    }
    double best = USUAL;
    double highest = Double.NEGATIVE_INFINITY;
    for (double radius = THINNEST; radius <= THICKEST; radius += STEP) {
      double tried = radius;
      double sum = rough.stream().mapToDouble(tear -> fit.score(tear.with(tried))).sum();
      if (sum > highest) {
        highest = sum;
        best = radius;
      }
    }
    return best;
  }

  private ZoneLook look(Spotted zone, double radius) {
    List<EndChoice> pairs = EndChoice.all(zone.tails(), zone.points(), radius, fit);
    return new ZoneLook(
        zone.zone(),
        EndChoice.best(pairs, this::clearer).map(choice -> found(zone, choice)),
        spot(zone));
  }

  private FoundTear found(Spotted zone, EndChoice choice) {
    FoundTear found = finder(choice.capsule()).find(zone.zone(), choice, others(zone, choice));
    return found.with(Unexplained.by(found, zone.spots(), second(found, zone.spots())));
  }

  private EndFinder finder(Capsule tear) {
    return new EndFinder(map, TearView.of(surface, kind, tear));
  }

  private double clearer(Capsule tear) {
    EndFinder finder = finder(tear);
    return finder.star(tear).quality() - finder.star(tear.turned()).quality();
  }

  /** The likeliest end that is none of the chosen ones: another arrow's. */
  private static Optional<EndMap.End> others(Spotted zone, EndChoice choice) {
    List<EndMap.End> all = new ArrayList<>(zone.tails());
    all.addAll(zone.points());
    return all.stream()
        .filter(end -> end.away(choice.tail()) > ASTRAY && end.away(choice.point()) > ASTRAY)
        .max(Comparator.comparingDouble(EndMap.End::probability));
  }

  /** How much the cells speak for a tear where the largest spot of a zone is. */
  private double spot(Spotted zone) {
    return zone.spots().stream()
        .limit(1)
        .mapToDouble(spot -> fit.score(fit.settled(spot.along(USUAL))))
        .findFirst()
        .orElse(0);
  }

  /** How much speaks for a tear where a spot is; 0 when it only leads to another place. */
  private static double inPlace(Capsule spot, TearFit rest) {
    Capsule settled = rest.settled(spot);
    double right = settled.pointX() + settled.tailX() - spot.pointX() - spot.tailX();
    double down = settled.pointY() + settled.tailY() - spot.pointY() - spot.tailY();
    return Math.hypot(right, down) / 2 < ASTRAY ? rest.score(settled) : 0;
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
