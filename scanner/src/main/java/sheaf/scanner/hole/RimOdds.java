package sheaf.scanner.hole;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How likely a shaft's axis is, and whether there is a hole at all: log-linear in the {@link
 * RimFeatures}.
 *
 * <p>The weights were measured on made holes whose axes are known, by the command in the table's
 * first line.
 */
final class RimOdds {

  private static final Map<Seeds.Kind, RimOdds> TABLE = load();

  private final RimFeatures.Sum where;
  private final double[] whether;

  private RimOdds(double[] where, double[] whether) {
    this.where = new RimFeatures.Sum(where);
    this.whether = whether;
  }

  /** The weights for what is seen through the holes. */
  static RimOdds of(Seeds.Kind kind) {
    return TABLE.get(kind);
  }

  /**
   * Log of how likely the axis is here, up to a constant, for each radius in a range; what the way
   * off the opening's middle says is added to it.
   *
   * @param least first radius, in pixels
   * @param most last radius, in pixels
   */
  float[] where(RimProfile rim, int least, int most) {
    return where.each(rim, least, most);
  }

  /**
   * What the way off the opening's middle says.
   *
   * @param off as a share of the shaft's diameter
   */
  double off(double off) {
    return where.off(off);
  }

  /**
   * Log odds that this is a hole.
   *
   * @param open share of the disc around the opening's middle
   */
  double whether(RimProfile rim, int radius, double off, double open) {
    float[] features = RimFeatures.of(rim, radius, off);
    double sum = whether[RimFeatures.COUNT] * open + whether[RimFeatures.COUNT + 1];
    for (int i = 0; i < features.length; i++) {
      sum += whether[i] * features[i];
    }
    return sum;
  }

  private static Map<Seeds.Kind, RimOdds> load() {
    try (InputStream table = RimOdds.class.getResourceAsStream("rim-odds.csv");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(table, StandardCharsets.US_ASCII))) {
      List<String> rows = lines.lines().toList();
      Map<Seeds.Kind, RimOdds> odds = new EnumMap<>(Seeds.Kind.class);
      for (Seeds.Kind kind : Seeds.Kind.values()) {
        odds.put(kind, of(rows.stream().filter(row -> row.startsWith(kind + ",")).toList()));
      }
      return odds;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static RimOdds of(List<String> rows) {
    double[] where = rows.stream().mapToDouble(row -> column(row, 2)).toArray();
    double[] whether = rows.stream().mapToDouble(row -> column(row, 3)).toArray();
    return new RimOdds(where, whether);
  }

  private static double column(String row, int index) {
    return Double.parseDouble(row.split(",")[index]);
  }
}
