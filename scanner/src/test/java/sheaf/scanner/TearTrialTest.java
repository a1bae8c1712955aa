package sheaf.scanner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;

class TearTrialTest {

  private static final SheetCode CODE =
      new SheetCode(
          JobId.random(new SplittableRandom(7)),
          2,
          Layouts.current(Variant.FOUR_ZONES, Paper.LETTER, UnitSystem.INCHES).id());

  private static final MmPoint POINT = new MmPoint(60, 80);

  private static TearReading tear(int zone, MmPoint tail) {
    return new TearReading(zone, POINT, 1, tail, 1, 3, 0.999);
  }

  private static List<Reason> doubts(TearReading... found) {
    return TearTrial.doubts(List.of(found), CODE, Optional.of(new PrintScale(0.5, 0.5)));
  }

  @Test
  void eachTearIsAskedAboutInTrueMillimetresAndWithItsHour() {
    assertThat(doubts(tear(1, new MmPoint(100, 80)), tear(3, new MmPoint(60, 60))))
        .extracting(Reason::message)
        .containsExactly(
            "Is zone 1 right: a tear of 20 mm, tail at 3 o'clock? Look at the picture.",
            "Is zone 3 right: a tear of 10 mm, tail at 12 o'clock? Look at the picture.");
  }

  @Test
  void soIsABulletHole() {
    assertThat(doubts(tear(2, POINT)))
        .containsExactly(
            Reason.at(
                ReasonCode.TEAR_ON_TRIAL,
                "Is zone 2 right: a bullet hole? Look at the picture.",
                POINT));
  }

  @Test
  void howeverSureATearIsAPersonMustLook() {
    assertThat(doubts(tear(1, new MmPoint(100, 80))))
        .allMatch(doubt -> doubt.code().ending() == ReadingState.CHECK);
  }

  @Test
  void aSheetWithoutTearsIsNotAskedAbout() {
    assertThat(doubts()).isEmpty();
  }
}
