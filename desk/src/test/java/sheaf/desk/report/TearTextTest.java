package sheaf.desk.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.TearReading;
import sheaf.core.result.JobSummary;

class TearTextTest {

  private static final JobId JOB = JobId.random(new SplittableRandom(5));
  private static final MmPoint POINT = new MmPoint(60, 70);

  private static PageReading sheet(TearReading... tears) {
    SheetCode code =
        new SheetCode(
            JOB, 2, Layouts.current(Variant.FOUR_ZONES, Paper.LETTER, UnitSystem.INCHES).id());
    return new PageReading(
        "tears.jpg",
        List.of(),
        Optional.of(code),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        List.of(tears),
        List.of(),
        OptionalDouble.empty());
  }

  private static String text(TearReading... tears) {
    return TearText.of(JobSummary.of(JOB, List.of(sheet(tears))), 100);
  }

  @Test
  void aTailUpAndToTheRightIsTowardTwoOClock() {
    MmPoint tail = new MmPoint(60 + 22, 70 - 12.7);
    assertThat(text(new TearReading(1, POINT, 1, tail, 1, 3, 1)))
        .isEqualTo(
            "  Sheet 2, zone 1: tail 25.4 mm = 1.00 in toward 2 o'clock (22.0 mm right, 12.7 mm high)\n");
  }

  @Test
  void aBulletHoleIsCalledOne() {
    assertThat(text(new TearReading(4, POINT, 1, POINT, 1, 3, 1)))
        .isEqualTo("  Sheet 2, zone 4: bullet hole\n");
  }

  @Test
  void theTableCountsTearsAndBulletHoles() {
    TearReading tear = new TearReading(1, POINT, 1, new MmPoint(80, 70), 1, 3, 1);
    TearReading bullet = new TearReading(2, POINT, 1, POINT, 1, 3, 1);
    assertThat(Found.on(sheet(tear, bullet), 30)).isEqualTo("1 tear, 1 bullet hole");
    assertThat(Found.on(sheet(), 30)).isEqualTo("no tears");
  }
}
