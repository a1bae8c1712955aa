package sheaf.core;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Values from outside the project, each with its source, in {@code oracles.json}. */
public final class Oracles {

  private static final JsonNode ALL = all();

  private Oracles() {}

  private static JsonNode all() {
    try (InputStream file = Oracles.class.getResourceAsStream("oracles.json")) {
      return new ObjectMapper().readTree(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The expected value, or values, of an id. */
  public static JsonNode expected(String id) {
    for (JsonNode oracle : ALL) {
      if (oracle.get("id").textValue().equals(id)) {
        return oracle.get("expected");
      }
    }
    throw new IllegalArgumentException("no oracle " + id);
  }

  /** One number of an id's expected values. */
  public static double expected(String id, String key) {
    return expected(id).get(key).doubleValue();
  }

  /** All ids. */
  static Set<String> ids() {
    Set<String> ids = new TreeSet<>();
    ALL.forEach(oracle -> ids.add(oracle.get("id").textValue()));
    return ids;
  }

  /** The rows of numbers of a file beside a class, without its comment and headings. */
  public static List<List<Double>> rows(Class<?> beside, String file) {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(beside.getResourceAsStream(file), StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> line.matches("[-0-9.].*"))
          .map(line -> Stream.of(line.split(",")).map(Oracles::number).toList())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double number(String cell) {
    return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
  }
}
