package sheaf.samples.tune;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.tune.ShopPrior;
import sheaf.samples.tune.TuningStudy.Outcome;

/** The plan against the rule of thumb on made bows whose answers nobody is told. */
class TuningStudyTest {

  private static final int BOWS = 1000;

  /** "Same point" is claimed with 95 % confidence, so so many of a thousand may be wrong. */
  private static final int WRONG_OF_A_THOUSAND = 50;

  /**
   * Of the sheets that the best rule of thumb needs, the plan needs 59 to 71 % on average; medians
   * are whole sheets and come out at up to 75 %.
   */
  private static final double SHARE_OF_MEAN = 0.72;

  private static final double SHARE_OF_MEDIAN = 0.75;

  /** A very strong or very weak answer can throw a bow far off for one sheet; it comes back. */
  private static final int FAR_OFF_FOR_A_WHILE = 3;

  /** So many of a thousand hardly answer to the rest and are handed on. */
  private static final int HANDED_ON = 3;

  /** A rule of thumb that happens to know which way this bow answers is as good as it gets. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopThatTunedBowsBeforeNeedsFewerSheetsThanTheLuckyRule(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(sign));
    ShopPrior prior = TuningStudy.earlier(sign, arrows);
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(prior));
    assertBetter(plan, thumb);
  }

  /** Without any earlier bow; the technician always moves the rest toward the field points. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopsFirstBowNeedsFewerSheetsThanAFixedDirection(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(1));
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(ShopPrior.NONE));
    assertBetter(plan, thumb);
  }

  @Test
  void aFixedDirectionDivergesOnABowThatAnswersTheOtherWay() {
    assertThat(TuningStudy.run(30, -1, 5, () -> Technician.byThumb(1)).diverged())
        .isGreaterThan(20);
    assertThat(TuningStudy.run(30, -1, 5, TuningStudy.planned(ShopPrior.NONE)).notShown()).isZero();
  }

  private static void assertBetter(Outcome plan, Outcome thumb) {
    assertThat(plan.mean()).isLessThanOrEqualTo(SHARE_OF_MEAN * thumb.mean());
    assertThat(plan.median()).isLessThanOrEqualTo(SHARE_OF_MEDIAN * thumb.median());
    assertThat(plan.diverged()).isLessThanOrEqualTo(FAR_OFF_FOR_A_WHILE);
    assertThat(plan.notShown()).isLessThanOrEqualTo(HANDED_ON);
    assertThat(plan.wrong()).isLessThanOrEqualTo(WRONG_OF_A_THOUSAND);
  }
}
