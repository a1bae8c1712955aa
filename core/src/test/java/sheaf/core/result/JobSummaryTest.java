package sheaf.core.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.reading.Head;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class JobSummaryTest {

  @Test
  void ofASheetReadTwiceTheLaterReadingCounts() {
    PageReading early = pair(2, 10);
    PageReading late = pair(2, 4);

    JobSummary job = JobSummary.of(Readings.JOB, List.of(early, late));

    assertThat(job.sheets()).containsExactly(late);
  }

  @Test
  void theBowWasLeftAsTheLastPairSheetShows() {
    JobSummary job = JobSummary.of(Readings.JOB, List.of(pair(3, 4), pair(2, 30)));

    assertThat(job.asLeft().orElseThrow().sheet().number()).isEqualTo(3);
  }

  @Test
  void aPairSheetWithOneHeadOnlyDoesNotSayHowTheBowWasLeft() {
    PageReading fieldOnly = Readings.pair(4).shot(Head.FIELD, 0, 0).read();

    JobSummary job = JobSummary.of(Readings.JOB, List.of(pair(3, 4), fieldOnly));

    assertThat(job.asLeft().orElseThrow().sheet().number()).isEqualTo(3);
  }

  @Test
  void pagesOfOtherJobsAndRefusedPagesAreLeftOut() {
    JobId other = JobId.random(new SplittableRandom(99));
    PageReading refused =
        PageReading.refused("photo.jpg", Reason.of(ReasonCode.NO_SHEET, "no sheet"));

    assertThat(JobSummary.of(other, List.of(pair(2, 3), refused)).sheets()).isEmpty();
  }

  @Test
  void whatTheInspectionDidNotFindSoundIsNamed() {
    PageReading card =
        Readings.card(1)
            .says("inspect_limbs", "not sound")
            .says("inspect_cams", "sound")
            .says("hand", "right")
            .read();

    JobSummary job = JobSummary.of(Readings.JOB, List.of(card));

    assertThat(job.notSound()).containsExactly("limbs");
    assertThat(job.benchCard("hand").orElseThrow().text()).isEqualTo("right");
    assertThat(job.benchCard("draw_length_left")).isEmpty();
  }

  @Test
  void aReturnCardsInspectionCountsAsABenchCardsDoes() {
    PageReading card = Readings.returnCard(1).says("inspect_riser", "not sound").read();

    assertThat(JobSummary.of(Readings.JOB, List.of(card)).notSound()).containsExactly("riser");
  }

  @Test
  void aDoubtOnAnySheetIsADoubtOnTheJob() {
    PageReading doubtful =
        Readings.pair(2).because(Reason.of(ReasonCode.HEAD_UNSURE, "which head?")).read();

    assertThat(JobSummary.of(Readings.JOB, List.of(doubtful)).hasDoubts()).isTrue();
    assertThat(JobSummary.of(Readings.JOB, List.of(pair(2, 3))).hasDoubts()).isFalse();
  }

  private static PageReading pair(int number, double offset) {
    return Readings.pair(number).shot(Head.FIELD, 0, 0).shot(Head.BROADHEAD, offset, 0).read();
  }
}
