package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.energy.BowNumbers;
import sheaf.core.energy.Pulls;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.Pages;

class JobJsonTest {

  @Test
  void offsetIsToldInMillimetresInchesAndMinutes() throws Exception {
    JsonNode offset = json(Pages.pair(Pages.JOB, 2, 25.4, 0)).get("pairs").get(0).get("offset");
    assertThat(offset.get("x").doubleValue()).isEqualTo(25.4);
    assertThat(offset.get("y").doubleValue()).isZero();
    assertThat(offset.get("inches").get("length").doubleValue()).isEqualTo(1.0);
    // One inch at 20 yd: atan(1/720) is 4.775 minutes of angle, worked out by hand.
    assertThat(offset.get("minutes").doubleValue()).isEqualTo(4.775, within(0.011));
    assertThat(offset.get("region").get("semiMajor").doubleValue()).isPositive();
  }

  @Test
  void groupIsToldFromItsDot() throws Exception {
    JsonNode broadhead =
        json(Pages.pair(Pages.JOB, 2, 30, -12)).get("pairs").get(0).get("broadhead");
    assertThat(broadhead.get("shots").intValue()).isEqualTo(3);
    assertThat(broadhead.get("x").doubleValue()).isEqualTo(30.0);
    assertThat(broadhead.get("y").doubleValue()).isEqualTo(-12.0);
  }

  @Test
  void jobWithOnlyABenchCardHasNoPairs() throws Exception {
    JsonNode job = json(Pages.benchCard(Pages.JOB, 1, "not sound"));
    assertThat(job.get("job").textValue()).isEqualTo("7G4KQ-2M8XE-0");
    assertThat(job.get("notSound").get(0).textValue()).isEqualTo("limbs");
    assertThat(job.get("doubts").booleanValue()).isTrue();
    assertThat(job.get("asLeft").isNull()).isTrue();
    assertThat(job.get("pairs")).isEmpty();
    assertThat(job.get("sheets")).hasSize(1);
  }

  @Test
  void lineSheetTellsItsDrift() throws Exception {
    JsonNode line = json(Pages.line(Pages.JOB, 3, -3, -5, -10, -15, -20)).get("lines").get(0);

    assertThat(line.get("number").intValue()).isEqualTo(3);
    assertThat(line.get("bands").get(4).get("distance").get("value").doubleValue()).isEqualTo(20);
    assertThat(line.get("bands").get(4).get("shots").get(0).get("x").doubleValue()).isEqualTo(-20);
    // By hand: 1 mm left for each yard.
    JsonNode drift = line.get("drift");
    assertThat(drift.get("mmPerMetre").get("value").doubleValue()).isEqualTo(-1.094, within(0.002));
    assertThat(drift.get("claim").textValue()).isEqualTo("shown");
    assertThat(drift.get("offsetClaim").textValue()).isEqualTo("not_shown");
    assertThat(line.get("practice").textValue()).contains("move the rest");
  }

  @Test
  void sightInSheetTellsHowFarToMoveTheSight() throws Exception {
    JsonNode group = json(Pages.sightIn(Pages.JOB, 4, 50.8, 0)).get("groups").get(0);

    assertThat(group.get("kind").textValue()).isEqualTo("sight-in");
    assertThat(group.get("shots").intValue()).isEqualTo(3);
    assertThat(group.get("centre").get("x").get("value").doubleValue()).isEqualTo(50.8);
    assertThat(group.get("sight").get("rightSquares").doubleValue()).isEqualTo(2);
    assertThat(group.get("sight").get("rightClaim").textValue()).isEqualTo("shown");
    assertThat(group.get("flyer").isNull()).isTrue();
    assertThat(group.get("sentences")).hasSize(4);
  }

  private static JsonNode json(PageReading... pages) throws Exception {
    JobSummary job = JobSummary.of(Pages.JOB, List.of(pages));
    return new ObjectMapper().readTree(line(job));
  }

  private static String line(JobSummary job) {
    BowRecord record = RecordOfSheets.of(job, Optional.empty());
    BowNumbers numbers = BowNumbers.of(record, Pulls.NONE);
    return JobJson.line(job, record, numbers, Optional.empty(), Optional.empty());
  }
}
