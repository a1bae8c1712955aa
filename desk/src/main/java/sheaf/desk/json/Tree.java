package sheaf.desk.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import sheaf.core.page.MmPoint;

/** Small helpers over Jackson's trees; whatever is missing or odd throws, naming the key. */
final class Tree {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Tree() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ObjectNode point(MmPoint point) {
    return object().put("x", Round.hundredth(point.x())).put("y", Round.hundredth(point.y()));
  }

  static MmPoint point(JsonNode node) {
    return new MmPoint(number(node, "x"), number(node, "y"));
  }

  static String line(JsonNode node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot be written", e);
    }
  }

  static JsonNode parse(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not JSON: " + e.getOriginalMessage(), e);
    }
  }

  static JsonNode get(JsonNode node, String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      throw new IllegalArgumentException("no \"" + key + "\"");
    }
    return value;
  }

  static <T> Optional<T> optional(JsonNode node, String key, Function<JsonNode, T> read) {
    return Optional.ofNullable(node.get(key)).filter(value -> !value.isNull()).map(read);
  }

  static String text(JsonNode node, String key) {
    JsonNode value = get(node, key);
    if (!value.isTextual()) {
      throw new IllegalArgumentException("\"" + key + "\" must be a text: " + value);
    }
    return value.textValue();
  }

  static double number(JsonNode node, String key) {
    JsonNode value = get(node, key);
    if (!value.isNumber()) {
      throw new IllegalArgumentException("\"" + key + "\" must be a number: " + value);
    }
    return value.doubleValue();
  }

  static OptionalDouble optionalNumber(JsonNode node, String key) {
    return get(node, key).isNull() ? OptionalDouble.empty() : OptionalDouble.of(number(node, key));
  }

  static <T> List<T> list(JsonNode node, String key, Function<JsonNode, T> read) {
    return StreamSupport.stream(get(node, key).spliterator(), false).map(read).toList();
  }

  /** The one value whose label is written there. */
  static <T> T labelled(T[] all, Function<T, String> label, JsonNode node, String key) {
    String wanted = text(node, key);
    return Arrays.stream(all)
        .filter(one -> label.apply(one).equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is unknown: " + wanted));
  }
}
