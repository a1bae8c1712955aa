package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What rims look like on a sheet whose holes are known, to measure the {@code rim-odds.csv} of this
 * package from.
 *
 * @param kind what is seen through the holes
 * @param places where a hole may be
 */
public record RimSurvey(String kind, List<Place> places) {

  /** Distance between the centres that are tried, in pixels. */
  private static final int PITCH = 3;

  /** How far from a place's middle centres are tried, in pixels. */
  private static final int REACH = 36;

  /** Copies the list. */
  public RimSurvey {
    places = List.copyOf(places);
  }

  /**
   * A place where a hole may be.
   *
   * @param middle of what is open or disturbed
   * @param open how much of it, as a share of the shaft's disc
   * @param views from centres around
   */
  public record Place(MmPoint middle, double open, List<View> views) {}

  /** A rim as seen from a centre. */
  public static final class View {

    private final MmPoint centre;
    private final double off;
    private final RimProfile rim;

    private View(MmPoint centre, double off, RimProfile rim) {
      this.centre = centre;
      this.off = off;
      this.rim = rim;
    }

    /** Where it is seen from. */
    public MmPoint centre() {
      return centre;
    }

    /**
     * The numbers that describe it.
     *
     * @param radius of the shaft, in pixels of the flat sheet
     */
    public float[] features(double radius) {
      return RimFeatures.of(rim, radius, off / (2 * radius));
    }
  }

  /** What the numbers that describe a rim are called, in order. */
  public static List<String> names() {
    return IntStream.range(0, RimFeatures.COUNT).mapToObj(RimFeatures::name).toList();
  }

  /**
   * Looks at every place where a hole may be.
   *
   * @param shot how many arrows of each head are ticked as shot
   * @param radius of the shaft, in pixels of the flat sheet
   */
  public static RimSurvey of(FlatSheet sheet, Layout layout, ArrowsShot shot, double radius) {
    Surface surface = Surface.of(sheet, layout);
    surface.seeBehind(Math.max(2, shot.all().orElse(0) / 2));
    try (Seeds seeds = Seeds.find(surface, shot)) {
      return new RimSurvey(
          seeds.kind().name(),
          seeds.places().stream().map(seed -> place(surface, seeds, seed, radius)).toList());
    }
  }

  private static Place place(Surface surface, Seeds seeds, Seeds.Seed seed, double radius) {
    Opening opening = Opening.of(seeds, seed, radius);
    double needed = REACH + RimProfile.LAST + RimProfile.MARGIN;
    Closeup closeup = Closeup.of(surface, seeds.kind(), opening.x(), opening.y(), needed);
    List<View> views = new ArrayList<>();
    int[] offsets =
        IntStream.rangeClosed(-REACH / PITCH, REACH / PITCH).map(i -> i * PITCH).toArray();
    for (int dy : offsets) {
      for (int dx : offsets) {
        views.add(view(closeup, opening, dx, dy));
      }
    }
    return new Place(FlatSheet.toPage(opening.x(), opening.y()), opening.share(), views);
  }

  private static View view(Closeup closeup, Opening opening, int dx, int dy) {
    int x = (int) Math.round(opening.x()) + dx;
    int y = (int) Math.round(opening.y()) + dy;
    double off = Math.hypot(x - opening.x(), y - opening.y());
    return new View(FlatSheet.toPage(x, y), off, RimProfile.around(closeup, x, y));
  }
}
