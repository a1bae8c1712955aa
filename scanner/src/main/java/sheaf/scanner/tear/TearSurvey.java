package sheaf.scanner.tear;

import java.util.List;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What cells show on a sheet whose tears are known, to measure the {@code tear-odds.csv} of this
 * package from.
 *
 * @param kind what is seen through the tears
 * @param torn how many cells of each sort lie in each ring of each part, in the table's order
 * @param plain how many cells of each sort lie where nothing is torn
 */
public record TearSurvey(String kind, long[] torn, long[] plain) {

  /** Beyond this distance from every tear paper counts as undisturbed, in millimetres. */
  private static final double FAR = 18;

  /** How many parts a tear has. */
  public static final int PARTS = TearOdds.Part.values().length;

  /** How many rings a part has. */
  public static final int RINGS = TearOdds.RINGS;

  /** How many sorts of cells there are. */
  public static final int SORTS = TornMap.SORTS;

  /**
   * A tear that is known.
   *
   * @param radius of the shaft in millimetres on the page as designed
   */
  public record Known(MmPoint point, MmPoint tail, double radius) {
    private Capsule capsule() {
      return new Capsule(point.x(), point.y(), tail.x(), tail.y(), radius);
    }
  }

  /** What a part is called in the table. */
  public static String part(int part) {
    return TearOdds.Part.values()[part].name();
  }

  /** Counts the cells of a sheet's zones. */
  public static TearSurvey of(FlatSheet sheet, Layout layout, List<Known> tears) {
    Surface surface = Surface.of(sheet, layout);
    try (Seeds seeds = Seeds.find(surface, ArrowsShot.of(List.of(), layout))) {
      TornMap map = TornMap.of(surface, seeds.kind());
      TearSurvey survey =
          new TearSurvey(seeds.kind().name(), new long[PARTS * RINGS * SORTS], new long[SORTS]);
      List<Capsule> capsules = tears.stream().map(Known::capsule).toList();
      capsules.forEach(tear -> TearCells.visit(map, tear, 1, index -> survey.torn[index]++));
      layout.zones().forEach(zone -> survey.countPlain(zone.rect(), map, capsules));
      return survey;
    }
  }

  private void countPlain(MmRect zone, TornMap map, List<Capsule> tears) {
    for (int row = TornMap.cell(zone.y()); row < TornMap.cell(zone.bottom()); row++) {
      for (int column = TornMap.cell(zone.x()); column < TornMap.cell(zone.right()); column++) {
        double x = TornMap.middle(column);
        double y = TornMap.middle(row);
        int sort = map.sort(column, row);
        if (sort != TornMap.HIDDEN && tears.stream().allMatch(t -> t.distance(x, y) > FAR)) {
          plain[sort]++;
        }
      }
    }
  }
}
