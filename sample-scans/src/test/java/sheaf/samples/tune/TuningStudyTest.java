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

  /** A rule of thumb that happens to know which way this bow answers is as good as it gets. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopThatTunedBowsBeforeNeedsAtMostSeventyPercentOfTheSheets(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(sign));
    ShopPrior prior = TuningStudy.earlier(sign, arrows);
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(prior));
    assertThat(plan.median()).isLessThanOrEqualTo(0.7 * thumb.median());
    assertThat(plan.diverged()).isZero();
    assertThat(plan.wrong()).isLessThanOrEqualTo(WRONG_OF_A_THOUSAND);
  }

  /** Without any earlier bow; the technician always moves the rest toward the field points. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopsFirstBowNeedsAtMostSeventyPercentOfTheSheets(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(1));
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(ShopPrior.NONE));
    assertThat(plan.median()).isLessThanOrEqualTo(0.7 * thumb.median());
    assertThat(plan.diverged()).isZero();
    assertThat(plan.wrong()).isLessThanOrEqualTo(WRONG_OF_A_THOUSAND);
  }

  @Test
  void aFixedDirectionDivergesOnABowThatAnswersTheOtherWay() {
    assertThat(TuningStudy.run(30, -1, 5, () -> Technician.byThumb(1)).diverged())
        .isGreaterThan(20);
    assertThat(TuningStudy.run(30, -1, 5, TuningStudy.planned(ShopPrior.NONE)).diverged()).isZero();
  }
}
