package sheaf.desk.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmVector;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;
import sheaf.desk.Pages;

class JobReportTest {

  @Test
  void offsetIsToldInMillimetresInchesAndMinutes() {
    assertThat(JobReport.offset(new MmVector(30, -40), Optional.of(9.4)))
        .isEqualTo("50.0 mm = 1.97 in = 9.4 MOA (30.0 mm right, 40.0 mm high)");
  }

  @Test
  void withoutADistanceThereAreNoMinutes() {
    assertThat(JobReport.offset(new MmVector(-30, 40), Optional.empty()))
        .isEqualTo("50.0 mm = 1.97 in (30.0 mm left, 40.0 mm low)");
  }

  @Test
  void failedInspectionComesFirst() {
    assertThat(report(Pages.benchCard(Pages.JOB, 1, "not sound")).lines().skip(1))
        .first()
        .isEqualTo("  DO NOT SHOOT this bow. Not sound: limbs.");
  }

  @Test
  void benchCardAloneAsksForAPairSheet() {
    assertThat(report(Pages.benchCard(Pages.JOB, 1, "sound")))
        .doesNotContain("DO NOT SHOOT")
        .contains("No pair sheet has been read yet.")
        .contains("Settle the doubts");
  }

  @Test
  void lineSheetIsToldWithWhatItSpeaksOf() {
    assertThat(report(Pages.line(Pages.JOB, 3, -3, -5, -10, -15, -20)))
        .contains(
            "  Sheet 3, line: 5 arrows at 5 bands\n    Impact drifts with distance, by 0.04 in")
        .contains("Common practice, no published standard: move the rest");
  }

  @Test
  void sightInSheetIsToldWithTheWayOfTheSight() {
    assertThat(report(Pages.sightIn(Pages.JOB, 4, 50.8, -25.4)))
        .contains("  Sheet 4, sight-in at 20 yd: 3 arrows\n")
        .contains("    Move the sight right: 2.0 squares = 50.8 mm = 2.00 in = 9.5 MOA");
  }

  @Test
  void nextStepIsTheCard() {
    assertThat(report(Pages.pair(Pages.JOB, 1, 0, 0)))
        .endsWith("  Next: sheaf card 7G4KQ-2M8XE-0 -o 7G4KQ-2M8XE-0.pdf\n");
  }

  @Test
  void nextStepFindsTheSameStore() {
    JobSummary job = JobSummary.of(Pages.JOB, List.of(Pages.pair(Pages.JOB, 1, 0, 0)));
    assertThat(JobReport.of(job, "--home 'a b'", 80)).endsWith("2M8XE-0.pdf --home 'a b'\n");
  }

  @Test
  void benchCardIsToldFieldByField() {
    assertThat(BenchCardText.of(JobSummary.of(Pages.JOB, cards())))
        .isEqualTo(
            """
            Bench card
              limbs                      sound
              hand                       right
              Draw length (ATA) as left  not read: see the sheet
            """);
  }

  private static List<PageReading> cards() {
    return List.of(Pages.benchCard(Pages.JOB, 1, "sound"));
  }

  private static String report(PageReading page) {
    return JobReport.of(JobSummary.of(Pages.JOB, List.of(page)), "", 80);
  }
}
