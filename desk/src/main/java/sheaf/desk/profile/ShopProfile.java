package sheaf.desk.profile;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.core.reading.NumberJudge;
import sheaf.core.record.Drifted;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.home.Settings;
import sheaf.forms.Shop;

/**
 * What a shop sets once; what it leaves out has its usual value.
 *
 * @param shop what papers and cards show of it
 * @param paper in the printer: letter or A4
 * @param units that sheets ask for
 * @param recordAddress where the record pages are on the web; empty when there are none
 * @param distances offered on sheets, near to far, for each kind of units in yards or metres
 * @param ownDistances the units for which the shop set distances itself
 * @param sure numbers on cards that are at least this sure need nobody's look, {@link #LEAST_SURE}
 *     to 1
 * @param database address of the PostgreSQL database that the store is kept in; empty when it is a
 *     file in the home folder
 * @param originals folder of the files that were read; empty for the usual place
 * @param scans folder that scanners drop files into
 * @param tolerances how far each measure may drift before it is told; all measures are there
 */
public record ShopProfile(
    Shop shop,
    Paper paper,
    UnitSystem units,
    Optional<RecordAddress> recordAddress,
    Map<UnitSystem, List<Distance>> distances,
    Set<UnitSystem> ownDistances,
    double sure,
    Optional<String> database,
    Optional<Path> originals,
    Optional<Path> scans,
    Map<DriftMeasure, Tolerance> tolerances) {

  /** Of numbers less sure than this, too many would be wrong without a word. */
  public static final double LEAST_SURE = 0.9;

  /** What holds where a shop sets nothing: letter paper, inches and yards. */
  public static final ShopProfile USUAL =
      new ShopProfile(
          Shop.NONE,
          Paper.LETTER,
          UnitSystem.INCHES,
          Optional.empty(),
          Map.of(
              UnitSystem.INCHES, distances(Unit.YARD, 10, 15, 20, 25, 30, 40, 50),
              UnitSystem.METRIC, distances(Unit.METRE, 10, 15, 18, 20, 30, 40, 50)),
          Set.of(),
          NumberJudge.USUALLY_SURE,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          usualTolerances());

  /** Copies what it is given; throws unless each map has all its keys. */
  public ShopProfile {
    ownDistances = Set.copyOf(ownDistances);
    distances = complete(UnitSystem.class, distances);
    tolerances = complete(DriftMeasure.class, tolerances);
  }

  private static <K extends Enum<K>, V> Map<K, V> complete(Class<K> keys, Map<K, V> given) {
    Map<K, V> copy = new EnumMap<>(given);
    if (copy.size() != keys.getEnumConstants().length) {
      throw new IllegalArgumentException("only for " + copy.keySet());
    }
    return Collections.unmodifiableMap(copy);
  }

  private static List<Distance> distances(Unit unit, int... values) {
    return Arrays.stream(values).mapToObj(value -> new Distance(value, unit)).toList();
  }

  private static Map<DriftMeasure, Tolerance> usualTolerances() {
    Map<DriftMeasure, Tolerance> usual = new EnumMap<>(DriftMeasure.class);
    Stream.of(DriftMeasure.values()).forEach(measure -> usual.put(measure, measure.usual()));
    return usual;
  }

  /** The distances for sheets that ask for these units: yards with inches, else metres. */
  public List<Distance> distances(UnitSystem asked) {
    return distances.get(asked);
  }

  /** The distances that the shop itself set for sheets that ask for these units. */
  public Optional<List<Distance>> ownDistances(UnitSystem asked) {
    return ownDistances.contains(asked) ? Optional.of(distances(asked)) : Optional.empty();
  }

  /** The tolerance of a measure. */
  public Tolerance tolerance(DriftMeasure measure) {
    return tolerances.get(measure);
  }

  /** The tolerances of all measures by their keys, as drifts are told by them. */
  public Map<String, Drifted.Tolerance> driftTolerances() {
    Map<String, Drifted.Tolerance> byKey = new HashMap<>();
    tolerances.forEach(
        (measure, most) ->
            byKey.put(measure.key(), new Drifted.Tolerance(most.value(), most.unit())));
    return byKey;
  }

  /** The usual profile with what an older file of settings says. */
  static ShopProfile of(Settings older) {
    return new ShopProfile(
        older.shop().map(Shop::named).orElse(Shop.NONE),
        older.paper().orElse(USUAL.paper),
        older.units().orElse(USUAL.units),
        older.recordAddress(),
        USUAL.distances,
        USUAL.ownDistances,
        USUAL.sure,
        USUAL.database,
        USUAL.originals,
        USUAL.scans,
        USUAL.tolerances);
  }
}
