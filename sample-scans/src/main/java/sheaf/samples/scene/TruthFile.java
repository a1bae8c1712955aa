package sheaf.samples.scene;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;

/** Truth as JSON, the file that lies beside a sample. */
public final class TruthFile {

  private static final ObjectMapper JSON = new ObjectMapper();

  private TruthFile() {}

  /** The truth as text, with every number in full. */
  public static String write(Truth truth) {
    ObjectNode root = JSON.createObjectNode();
    root.put("code", truth.code());
    root.put("behind", truth.behind());
    root.put("dpi", truth.dpi());
    root.put("colour", truth.colour());
    root.put("statesDpi", truth.statesDpi());
    root.putObject("printScale").put("x", truth.scaleX()).put("y", truth.scaleY());
    root.put("shaft", truth.shaft());
    ObjectNode ticks = root.putObject("ticks");
    truth.ticks().forEach(ticks::put);
    truth.shots().forEach(shot -> write(shot, root.withArray("shots").addObject()));
    truth
        .offset()
        .ifPresent(way -> root.putObject("offset").put("dx", way.dx()).put("dy", way.dy()));
    root.put("expected", truth.expected());
    return root.toPrettyString() + "\n";
  }

  private static void write(Shot shot, ObjectNode node) {
    node.put("x", shot.axis().x());
    node.put("y", shot.axis().y());
    node.put("head", shot.head().label());
    node.put("blades", shot.blades());
    node.put("cut", shot.cut());
    node.put("aim", shot.aim().label());
    shot.zone().ifPresent(zone -> node.put("zone", zone));
    node.putObject("opening").put("x", shot.opening().x()).put("y", shot.opening().y());
  }

  /**
   * Reads a truth.
   *
   * @throws IllegalArgumentException when the text is not a truth
   */
  public static Truth read(String text) {
    try {
      JsonNode root = JSON.readTree(text);
      Map<String, String> ticks = new TreeMap<>();
      root.required("ticks")
          .properties()
          .forEach(tick -> ticks.put(tick.getKey(), tick.getValue().asText()));
      List<Shot> shots = new ArrayList<>();
      root.path("shots").forEach(node -> shots.add(shot(node)));
      return new Truth(
          root.required("code").asText(),
          root.required("behind").asText(),
          root.required("dpi").asInt(),
          root.required("colour").asBoolean(),
          root.required("printScale").required("x").asDouble(),
          root.required("printScale").required("y").asDouble(),
          root.required("statesDpi").asBoolean(),
          root.required("shaft").asDouble(),
          ticks,
          shots,
          offset(root.path("offset")),
          root.required("expected").asText());
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not a truth: " + e.getOriginalMessage(), e);
    }
  }

  private static Shot shot(JsonNode node) {
    return new Shot(
        place(node),
        Head.valueOf(constant(node.required("head"))),
        node.required("blades").asInt(),
        node.required("cut").asDouble(),
        Aim.valueOf(constant(node.required("aim"))),
        node.has("zone") ? OptionalInt.of(node.get("zone").asInt()) : OptionalInt.empty(),
        place(node.required("opening")));
  }

  private static MmPoint place(JsonNode node) {
    return new MmPoint(node.required("x").asDouble(), node.required("y").asDouble());
  }

  private static String constant(JsonNode label) {
    return label.asText().toUpperCase(Locale.ROOT);
  }

  private static Optional<MmVector> offset(JsonNode node) {
    return node.isMissingNode()
        ? Optional.empty()
        : Optional.of(new MmVector(node.required("dx").asDouble(), node.required("dy").asDouble()));
  }
}
