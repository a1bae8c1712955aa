package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class TearJudgeTest {

  private static final ZonesShot NOT_TICKED = new ZonesShot(Set.of());
  private static final ZonesShot TICKED = new ZonesShot(Set.of(2));

  private static TearReader.Tears judge(FoundTear tear, ZonesShot shot) {
    return TearJudge.judge(List.of(new ZoneLook(Ends.ZONE, Optional.of(tear), 0)), shot);
  }

  private static List<ReasonCode> doubts(FoundTear tear) {
    return judge(tear, NOT_TICKED).doubts().stream().map(Reason::code).toList();
  }

  @Test
  void aClearTearIsReadWithoutADoubt() {
    FoundTear tear = Ends.tear(Ends.choice(60, 9, 0.9), 0.2);
    assertThat(doubts(tear)).isEmpty();
    assertThat(judge(tear, NOT_TICKED).found()).hasSize(1);
  }

  @Test
  void twoEstimatesOfATailThatDifferAreADoubt() {
    assertThat(doubts(Ends.tear(Ends.choice(60, 9, 0.9), 4)))
        .containsExactly(ReasonCode.TEAR_END_UNCLEAR);
  }

  @Test
  void aTearThatMayLieTheOtherWayRoundIsADoubt() {
    assertThat(doubts(Ends.tear(Ends.choice(60, 0.5, 0.9), 0.2)))
        .containsExactly(ReasonCode.TEAR_ENDS_UNSURE);
  }

  @Test
  void aTearSheetOnWhichNothingWasFoundIsADoubt() {
    TearReader.Tears tears =
        TearJudge.judge(List.of(new ZoneLook(Ends.ZONE, Optional.empty(), 0)), NOT_TICKED);
    assertThat(tears.found()).isEmpty();
    assertThat(tears.doubts()).extracting(Reason::code).containsExactly(ReasonCode.TEAR_UNSURE);
  }

  @Test
  void aFaintEndIsAskedAboutSoonerWhereAChangeIsTicked() {
    FoundTear faint = Ends.tear(Ends.choice(-9, 1, 0.25), 0);
    assertThat(judge(faint, TICKED).doubts()).hasSize(2);
    assertThat(judge(faint, NOT_TICKED).doubts()).hasSize(1);
  }

  @Test
  void aTornSpotThatNoEndExplainsIsADoubt() {
    TearReader.Tears tears =
        TearJudge.judge(
            List.of(
                new ZoneLook(Ends.ZONE, Optional.of(Ends.tear(Ends.choice(60, 9, 0.9), 0)), 0),
                new ZoneLook(Ends.ZONE, Optional.empty(), 19000)),
            NOT_TICKED);
    assertThat(tears.doubts())
        .extracting(Reason::message)
        .containsExactly("Is there a tear in zone 2?");
  }
}
