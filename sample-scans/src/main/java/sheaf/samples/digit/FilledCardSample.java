package sheaf.samples.digit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One side of a bench card that was filled in by hand: the committed scan and what was written.
 *
 * @param name of the scan's file
 * @param file its content
 * @param answers what was meant, by field
 * @param note whether something is written freely
 */
public record FilledCardSample(
    String name, byte[] file, Map<String, String> answers, boolean note) {

  static final List<String> NAMES = List.of("filled-card-front.jpg", "filled-card-back.jpg");

  private static final String FOLDER = "/sheaf/samples/scans/";

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Keeps the answers in the order of their keys. */
  public FilledCardSample {
    answers = Collections.unmodifiableMap(new TreeMap<>(answers));
  }

  /** Both sides of the committed card. */
  public static List<FilledCardSample> both() {
    return NAMES.stream().map(FilledCardSample::load).toList();
  }

  private static FilledCardSample load(String name) {
    try {
      JsonNode truth = JSON.readTree(new String(bytes(truthName(name)), StandardCharsets.UTF_8));
      Map<String, String> answers = new TreeMap<>();
      truth
          .required("answers")
          .properties()
          .forEach(entry -> answers.put(entry.getKey(), entry.getValue().asText()));
      return new FilledCardSample(name, bytes(name), answers, truth.required("note").asBoolean());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("not a truth: " + name, e);
    }
  }

  /** What was written, as the file beside the scan tells it. */
  String truth() {
    ObjectNode truth = JSON.createObjectNode();
    ObjectNode written = truth.putObject("answers");
    answers.forEach(written::put);
    truth.put("note", note);
    return truth.toPrettyString() + "\n";
  }

  static String truthName(String name) {
    return name.replace(".jpg", ".json");
  }

  private static byte[] bytes(String name) {
    try (InputStream in = FilledCardSample.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new FileNotFoundException("no sample " + name + " on the class path");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
