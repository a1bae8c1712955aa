package sheaf.samples.tune;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.tune.ShopPrior;
import sheaf.samples.tune.TuningStudy.Bows;
import sheaf.samples.tune.TuningStudy.Outcome;

/** The plan against the rule of thumb on made bows whose answers nobody is told. */
class TuningStudyTest {

  private static final Bows BOWS = new Bows(TuningStudy.FIRST_SEED, 1000);
  private static final Bows FEW = new Bows(TuningStudy.FIRST_SEED, 30);

  /** "Same point" is claimed with 95 % confidence, so so many of a thousand may be wrong. */
  private static final int WRONG_OF_A_THOUSAND = 50;

  /** What the plan may need of the sheets that the luckiest rule of thumb needs. */
  private static final double SHARE = 0.7;

  /** The same of a shop's first bow, of which nobody but the lucky one knows the direction. */
  private static final double SHARE_OF_THE_FIRST = 0.86;

  /** A rule of thumb that happens to know which way this bow answers is as good as it gets. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopThatTunedBowsBeforeNeedsFewerSheetsThanTheLuckyRule(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(sign));
    ShopPrior prior = TuningStudy.earlier(sign, arrows);
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(prior));
    assertBetter(plan, thumb, SHARE);
  }

  /** Without any earlier bow, against a technician who happens to know the direction. */
  @Tag("slow")
  @ParameterizedTest(name = "{1} arrows of each head, answers with sign {0}")
  @CsvSource({"1, 3", "1, 5", "-1, 3", "-1, 5"})
  void aShopsFirstBowNeedsFewerSheetsThanTheLuckyRule(int sign, int arrows) {
    Outcome thumb = TuningStudy.run(BOWS, sign, arrows, () -> Technician.byThumb(sign));
    Outcome plan = TuningStudy.run(BOWS, sign, arrows, TuningStudy.planned(ShopPrior.NONE));
    assertBetter(plan, thumb, SHARE_OF_THE_FIRST);
  }

  @Test
  void aFixedDirectionDivergesOnABowThatAnswersTheOtherWay() {
    assertThat(TuningStudy.run(FEW, -1, 5, () -> Technician.byThumb(1)).diverged())
        .isGreaterThan(20);
    assertThat(TuningStudy.run(FEW, -1, 5, TuningStudy.planned(ShopPrior.NONE)).notShown())
        .isZero();
  }

  private static void assertBetter(Outcome plan, Outcome thumb, double share) {
    assertThat(plan.mean()).isLessThanOrEqualTo(share * thumb.mean());
    assertThat(plan.median()).isLessThanOrEqualTo(share * thumb.median());
    assertThat(plan.diverged()).isZero();
    assertThat(plan.notShown()).isZero();
    assertThat(plan.wrong()).isLessThanOrEqualTo(WRONG_OF_A_THOUSAND);
  }
}
