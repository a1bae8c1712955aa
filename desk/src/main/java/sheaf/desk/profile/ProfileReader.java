package sheaf.desk.profile;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.home.Settings;
import sheaf.desk.store.StorePlace;
import sheaf.forms.Shop;

/** Understands the settings of a profile and gathers all that is wrong with them. */
final class ProfileReader {

  /** A row of tick boxes has room for so many. */
  private static final int MOST_DISTANCES = 7;

  /** A distance is written into three boxes, in yards or metres. */
  private static final long FARTHEST = 999;

  private final TomlText text;
  private final TomlParseResult toml;
  private final Path folder;
  private final List<Problem> problems;

  /**
   * Gets ready to read.
   *
   * @param text of the profile
   * @param folder where the profile lies, and its logo is looked for
   */
  ProfileReader(TomlText text, Path folder) {
    this.text = text;
    this.toml = text.toml();
    this.folder = folder;
    this.problems = new ArrayList<>(text.problems());
    problems.addAll(UnknownKeys.in(toml));
  }

  /** What the profile says; usual values stand in for what has a problem. */
  ShopProfile profile() {
    ShopProfile usual = ShopProfile.USUAL;
    Shop shop =
        new Shop(
            words("shop.name", name -> Shop.line(name, Shop.LONGEST_NAME)),
            words("shop.contact", contact -> Shop.line(contact, Shop.LONGEST_CONTACT)),
            words("shop.logo", file -> LogoFile.read(beside(file))));
    Map<UnitSystem, List<Distance>> own = ownDistances();
    Map<UnitSystem, List<Distance>> distances = new EnumMap<>(usual.distances());
    distances.putAll(own);
    return new ShopProfile(
        shop,
        value("paper", value -> Settings.paper(shown(value))).orElse(usual.paper()),
        value("units", value -> Settings.units(shown(value))).orElse(usual.units()),
        words("record.address", RecordAddress::new),
        distances,
        own.keySet(),
        value("reading.sure", ProfileReader::sure).orElse(usual.sure()),
        words("store.database", StorePlace::address),
        words("store.originals", this::originals).flatMap(folder -> folder),
        words("scans.folder", this::beside),
        tolerances());
  }

  /** What is wrong, from the top of the file. */
  List<Problem> problems() {
    return problems.stream().sorted(Comparator.comparingInt(Problem::line)).toList();
  }

  private Path beside(String file) {
    try {
      return folder.resolve(file);
    } catch (InvalidPathException e) {
      throw new IllegalArgumentException("is no name of a file: '" + file + "'", e);
    }
  }

  /** Empty for the database itself, which is the usual place. */
  private Optional<Path> originals(String where) {
    return where.equals("database") ? Optional.empty() : Optional.of(beside(where));
  }

  private static double sure(Object value) {
    if (value instanceof Number share
        && share.doubleValue() >= ShopProfile.LEAST_SURE
        && share.doubleValue() <= 1) {
      return share.doubleValue();
    }
    throw new IllegalArgumentException(
        "must be a number from " + ShopProfile.LEAST_SURE + " to 1, not " + quoted(value));
  }

  private Map<DriftMeasure, Tolerance> tolerances() {
    Map<DriftMeasure, Tolerance> tolerances = new EnumMap<>(DriftMeasure.class);
    for (DriftMeasure measure : DriftMeasure.values()) {
      String key = "tolerances." + measure.key();
      tolerances.put(measure, words(key, measure::tolerance).orElse(measure.usual()));
    }
    return tolerances;
  }

  private Map<UnitSystem, List<Distance>> ownDistances() {
    Map<UnitSystem, List<Distance>> own = new EnumMap<>(UnitSystem.class);
    distances("distances.yd", Unit.YARD).ifPresent(list -> own.put(UnitSystem.INCHES, list));
    distances("distances.m", Unit.METRE).ifPresent(list -> own.put(UnitSystem.METRIC, list));
    return own;
  }

  private Optional<List<Distance>> distances(String key, Unit unit) {
    return value(key, ProfileReader::list).map(list -> distances(key, list, unit));
  }

  private static TomlArray list(Object value) {
    if (value instanceof TomlArray list && list.size() >= 1 && list.size() <= MOST_DISTANCES) {
      return list;
    }
    throw new IllegalArgumentException(
        "must be a list of 1 to " + MOST_DISTANCES + " distances such as [10, 20, 30]");
  }

  private List<Distance> distances(String key, TomlArray list, Unit unit) {
    List<Distance> distances = new ArrayList<>();
    long nearer = 0;
    for (int i = 0; i < list.size(); i++) {
      int line = text.lineOf(list, i);
      Object value = list.get(i);
      if (!(value instanceof Long distance) || distance < 1 || distance > FARTHEST) {
        complain(
            line,
            "%s must hold whole numbers from 1 to %d, not %s."
                .formatted(key, FARTHEST, quoted(value)));
      } else if (distance <= nearer) {
        complain(
            line,
            "%s must go from near to far, each once, but %d stands behind %d."
                .formatted(key, distance, nearer));
      } else {
        distances.add(new Distance(distance, unit));
        nearer = distance;
      }
    }
    return List.copyOf(distances);
  }

  private <T> Optional<T> words(String key, Function<String, T> meaning) {
    return value(
        key,
        value -> {
          if (value instanceof String words) {
            return meaning.apply(words);
          }
          throw new IllegalArgumentException(
              "must be words in quotation marks, not " + quoted(value));
        });
  }

  /** What a setting means; empty when it is not set, or complained of. */
  private <T> Optional<T> value(String key, Function<Object, T> meaning) {
    List<String> path = List.of(key.split("\\."));
    // Above a setting there may stand a value where a heading should be, which was complained of.
    boolean reachable = path.size() == 1 || toml.get(path.subList(0, 1)) instanceof TomlTable;
    Object value = reachable ? toml.get(path) : null;
    if (value == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(meaning.apply(value));
    } catch (IllegalArgumentException e) {
      complain(toml.inputPositionOf(path).line(), key + " " + e.getMessage() + ".");
      return Optional.empty();
    }
  }

  private void complain(int line, String sentence) {
    problems.add(new Problem(line, sentence));
  }

  private static String quoted(Object value) {
    return value instanceof String ? "'" + value + "'" : shown(value);
  }

  private static String shown(Object value) {
    if (value instanceof TomlTable) {
      return "a heading";
    }
    return value instanceof TomlArray ? "a list" : value.toString();
  }
}
