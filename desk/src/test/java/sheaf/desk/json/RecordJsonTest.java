package sheaf.desk.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.BowRecords;
import sheaf.desk.Pages;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.CarriedRecord;
import sheaf.forms.FinishedCard;
import sheaf.forms.Shop;

/**
 * Records as JSON against the published schema, which is read by an independent validator of JSON
 * Schema, draft 2020-12.
 */
class RecordJsonTest {

  private static final JsonSchema SCHEMA = schema();
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void everyRecordIsReadBackEqual(@ForAll("records") BowRecord record) {
    assertThat(RecordJson.parse(RecordJson.line(record))).isEqualTo(record);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void everyRecordConformsToTheSchema(@ForAll("records") BowRecord record) throws IOException {
    assertThat(SCHEMA.validate(MAPPER.readTree(RecordJson.line(record)))).isEmpty();
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void everyRecordComesBackEqualFromItsCardAndMakesTheSameCardAgain(
      @ForAll("records") BowRecord record, @ForAll CardForm form) throws IOException {
    byte[] card = card(record, form);
    BowRecord restored = RecordJson.parse(carried(card));

    assertThat(restored).isEqualTo(record);
    assertThat(card(restored, form)).isEqualTo(card);
  }

  private static byte[] card(BowRecord record, CardForm form) throws IOException {
    CardPaper paper = form == CardForm.CARD ? CardPaper.A5 : CardPaper.A4;
    CardDetails details =
        new CardDetails(form, paper, LocalDate.EPOCH, Shop.NONE, Optional.empty());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FinishedCard.write(record, details, RecordJson.line(record).getBytes(UTF_8), out);
    return out.toByteArray();
  }

  private static String carried(byte[] card) {
    return new String(((CarriedRecord.Whole) FinishedCard.carried(card)).json(), UTF_8);
  }

  @Provide
  Arbitrary<BowRecord> records() {
    return BowRecords.any();
  }

  @Test
  void aRecordMadeFromPapersConformsAndIsReadBackEqual() throws IOException {
    BowRecord record =
        RecordOfSheets.of(
            JobSummary.of(
                Pages.JOB,
                List.of(
                    Pages.benchCard(Pages.JOB, 1, "not sound"), Pages.pair(Pages.JOB, 2, 30, 12))),
            Optional.empty());

    assertThat(SCHEMA.validate(MAPPER.readTree(RecordJson.line(record)))).isEmpty();
    assertThat(RecordJson.parse(RecordJson.line(record))).isEqualTo(record);
  }

  @Test
  void theSchemaRefusesABlankThatIsAZeroAndAUnitThatIsNone() throws IOException {
    ObjectNode taken = measured();
    assertThat(SCHEMA.validate(taken)).isEmpty();
    ((ObjectNode) taken.at("/visits/0/measures/0")).put("left", 0);
    assertThat(SCHEMA.validate(taken)).isNotEmpty();

    ObjectNode unit = measured();
    ((ObjectNode) unit.at("/visits/0/pairs/0/distance")).put("unit", "furlong");
    assertThat(SCHEMA.validate(unit)).isNotEmpty();
  }

  @Test
  void whatIsNoRecordIsRefusedWithTheReason() throws IOException {
    assertRefused("[]", "format");
    assertRefused("{\"format\":\"other\",\"version\":1}", "not a record: other");
    ObjectNode newer = measured().put("version", 2);
    assertRefused(newer.toString(), "a record of format 2, where 1 is known");
    ObjectNode odd = measured();
    ((ObjectNode) odd.at("/visits/0")).put("job", "7G4KQ-2M8XE-1");
    assertRefused(odd.toString(), "not a job id");
    ObjectNode unit = measured();
    ((ObjectNode) unit.at("/visits/0/pairs/0/distance")).put("unit", "furlong");
    assertRefused(unit.toString(), "\"unit\" is unknown: furlong");
  }

  private static ObjectNode measured() throws IOException {
    JobSummary job = JobSummary.of(Pages.JOB, List.of(Pages.pair(Pages.JOB, 2, 30, 12)));
    JsonNode tree = MAPPER.readTree(RecordJson.line(RecordOfSheets.of(job, Optional.empty())));
    return (ObjectNode) tree;
  }

  private static void assertRefused(String json, String why) {
    assertThatThrownBy(() -> RecordJson.parse(json))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }

  private static JsonSchema schema() {
    try (InputStream file =
        BowRecord.class.getResourceAsStream("/sheaf/core/record/record.schema.json")) {
      return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
