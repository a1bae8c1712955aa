package sheaf.scanner.tear;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import sheaf.scanner.hole.Seeds;

/**
 * How much each sort of cell speaks for a tear, by where it lies on it: the log of how much oftener
 * it is met there than on undisturbed paper.
 *
 * <p>Counted on made tears that are known, by the command in the table's first line.
 */
final class TearOdds {

  /** A part of a tear that looks its own way. */
  enum Part {
    /** Beyond the point's end. */
    POINT,
    /** Beside the way. */
    WAY,
    /** Beyond the tail's end. */
    TAIL
  }

  /** Distances from the shaft's edge, in millimetres: inside it they are below zero. */
  static final double INNERMOST = -3.5;

  static final double OUTERMOST = 4;

  /** Width of a ring in which cells are counted together, in millimetres. */
  static final double RING = 0.25;

  /** How many rings. */
  static final int RINGS = (int) Math.round((OUTERMOST - INNERMOST) / RING);

  private static final Map<Seeds.Kind, TearOdds> TABLE = load();

  private final float[] odds;

  private TearOdds(float[] odds) {
    this.odds = odds;
  }

  /** The odds for what is seen through a sheet's tears. */
  static TearOdds of(Seeds.Kind kind) {
    return TABLE.get(kind);
  }

  /** Where a sort in a part's ring stands in the table. */
  static int index(Part part, int ring, int sort) {
    return (part.ordinal() * RINGS + ring) * TornMap.SORTS + sort;
  }

  /** The ring at a distance from the shaft's edge, at most the outermost one. */
  static int ring(double outside) {
    return (int) Math.max(0, Math.min(RINGS - 1, Math.floor((outside - INNERMOST) / RING)));
  }

  /** How much a cell speaks for a tear, by its {@link #index}. */
  float at(int index) {
    return odds[index];
  }

  private static Map<Seeds.Kind, TearOdds> load() {
    Map<Seeds.Kind, TearOdds> table = new EnumMap<>(Seeds.Kind.class);
    for (Seeds.Kind kind : Seeds.Kind.values()) {
      table.put(kind, new TearOdds(new float[Part.values().length * RINGS * TornMap.SORTS]));
    }
    try (InputStream in = TearOdds.class.getResourceAsStream("tear-odds.csv");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
      lines.lines().filter(line -> !line.startsWith("#")).forEach(line -> put(line, table));
      return table;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A line names what is seen, a part and a ring, and gives the odds of every sort. */
  private static void put(String line, Map<Seeds.Kind, TearOdds> table) {
    String[] columns = line.split(",");
    float[] odds = table.get(Seeds.Kind.valueOf(columns[0])).odds;
    Part part = Part.valueOf(columns[1]);
    int ring = Integer.parseInt(columns[2]);
    for (int sort = 0; sort < TornMap.SORTS; sort++) {
      odds[index(part, ring, sort)] = Float.parseFloat(columns[3 + sort]);
    }
  }
}
