package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReasonCode;
import sheaf.desk.Pages;

class PageJsonTest {

  @Test
  void pageHasItsKeysInOrder() throws Exception {
    assertThat(keys(json(Pages.pair(Pages.JOB, 3, 10, 5))))
        .containsExactly(
            "source",
            "status",
            "reasons",
            "sheet",
            "pixelsPerMm",
            "printScale",
            "printScaleXY",
            "holes",
            "tears",
            "fields",
            "linesWithin",
            "note");
  }

  @Test
  void sheetIsNamedByJobNumberKindAndLayout() throws Exception {
    assertThat(json(Pages.pair(Pages.JOB, 3, 10, 5)).get("sheet"))
        .hasToString(
            "{\"job\":\"7G4KQ-2M8XE-0\",\"number\":3,\"kind\":\"pair\",\"variant\":\"two-dots\","
                + "\"layout\":1,\"page\":\"letter\",\"units\":\"in\"}");
  }

  @Test
  void holeIsToldInHundredthsOfAMillimetre() throws Exception {
    Hole hole =
        new Hole(
            new MmPoint(104.1999, 88.104),
            0.2512,
            6.498,
            Head.BROADHEAD,
            3,
            31.5,
            Aim.FIELD,
            OptionalInt.of(4),
            0.98);
    assertThat(json(with(hole, Optional.empty())).get("holes").get(0))
        .hasToString(
            "{\"x\":104.2,\"y\":88.1,\"head\":\"broadhead\",\"blades\":3,\"cut\":31.5,"
                + "\"aim\":\"field\",\"zone\":4,\"confidence\":0.98,\"axisError\":0.25,\"diameter\":6.5}");
  }

  @Test
  void printScaleIsOneNumberAndItsTwoParts() throws Exception {
    JsonNode page =
        json(with(Pages.pair(Pages.JOB, 1, 0, 0).holes().get(0), new PrintScale(0.99, 0.992)));
    assertThat(page.get("printScale")).hasToString("0.991");
    assertThat(page.get("printScaleXY")).hasToString("{\"x\":0.99,\"y\":0.992}");
  }

  @Test
  void whatIsUnknownIsNull() throws Exception {
    JsonNode page = json(Pages.refused());
    assertThat(page.get("sheet").isNull()).isTrue();
    assertThat(page.get("pixelsPerMm").isNull()).isTrue();
    assertThat(page.get("printScale").isNull()).isTrue();
    assertThat(page.get("status").textValue()).isEqualTo("refused");
    assertThat(page.get("reasons").get(0).get("code").textValue()).isEqualTo("too_few_marks");
  }

  @Test
  void fieldsSayTextValueUnitConfidenceAndState() throws Exception {
    JsonNode fields = json(Pages.pair(Pages.JOB, 3, 10, 5)).get("fields");
    assertThat(fields.get("distance"))
        .hasToString(
            "{\"text\":\"20\",\"value\":20.0,\"unit\":\"yd\",\"confidence\":0.99,"
                + "\"state\":\"read\"}");
    assertThat(fields.get("changed"))
        .hasToString(
            "{\"text\":null,\"value\":null,\"unit\":null,\"confidence\":0.99,"
                + "\"state\":\"blank\"}");
  }

  @Test
  void linesReadBackAsTheyWereWritten() {
    PageReading doubted =
        Pages.doubted(
            Pages.pair(Pages.JOB, 3, 10, 5), ReasonCode.HEAD_UNSURE, "Look at \"this\"\n");
    for (PageReading page :
        List.of(doubted, Pages.benchCard(Pages.JOB, 1, "sound"), Pages.refused())) {
      assertThat(PageJson.line(page)).doesNotContain("\n");
      assertThat(PageJson.parse(PageJson.line(page))).isEqualTo(page);
    }
  }

  @Test
  void whatIsNoPageIsRefusedNamingTheKey() {
    assertThatThrownBy(() -> PageJson.parse("{\"source\":3}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"source\" must be a text");
    assertThatThrownBy(() -> PageJson.parse("{\"source\":"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not JSON");
    String unknownReason =
        PageJson.line(Pages.refused()).replace("too_few_marks", "invented_later");
    assertThatThrownBy(() -> PageJson.parse(unknownReason))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("invented_later");
  }

  private static PageReading with(Hole hole, PrintScale scale) {
    return with(hole, Optional.of(scale));
  }

  private static PageReading with(Hole hole, Optional<PrintScale> scale) {
    return new PageReading(
        "pair.jpg",
        List.of(),
        Pages.pair(Pages.JOB, 1, 0, 0).sheet(),
        OptionalDouble.empty(),
        scale,
        List.of(hole),
        List.of());
  }

  private static JsonNode json(PageReading page) throws Exception {
    return new ObjectMapper().readTree(PageJson.line(page));
  }

  private static List<String> keys(JsonNode node) {
    return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
        .toList();
  }
}
