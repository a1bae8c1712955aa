package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.PageReading;
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

  private static JsonNode json(PageReading... pages) throws Exception {
    JobSummary job = JobSummary.of(Pages.JOB, List.of(pages));
    return new ObjectMapper().readTree(JobJson.line(job, RecordOfSheets.of(job, Optional.empty())));
  }
}
