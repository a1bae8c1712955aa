package sheaf.samples.tune;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.record.Visit;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.ShopPrior;
import sheaf.samples.Terminal;

/**
 * How many sheets it takes to show broadheads and field points within an inch at 20 yd, by the plan
 * and by rules of thumb, on the same made bows.
 *
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.samples.tune.TuningStudy 1000}
 */
public final class TuningStudy {

  /** Bows that a shop tuned before, for the plan that may learn from them. */
  private static final int EARLIER_BOWS = 20;

  private static final long EARLIER_SEEDS = 1_000_000;

  /** Farther apart than this many times what they were, or than an inch, counts as diverged. */
  private static final double DIVERGED = 3;

  static final BowSetup SETUP =
      new BowSetup(
          BowType.COMPOUND,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          UnitSystem.INCHES);

  /**
   * What a way of tuning came to over many bows.
   *
   * @param median sheets until shown; given up counts as {@value MadeJob#MOST_SHEETS}
   * @param mean sheets, counted alike
   * @param ninety sheets that 90 bows in 100 need at most
   * @param notShown bows that were given up
   * @param diverged bows whose heads were at any time more than {@value #DIVERGED} times as far
   *     apart as at first, or as an inch, even when they came back
   * @param wrong bows whose heads were shown within an inch and truly were not
   */
  record Outcome(double median, double mean, int ninety, int notShown, int diverged, int wrong) {}

  private TuningStudy() {}

  /** Prints the table; an argument says how many bows of each sort. */
  public static void main(String[] arguments) {
    int bows = Integer.parseInt(arguments[0]);
    Terminal.out()
        .println(
            "arrows  bows answer       tuned by                        median  mean  90 %  given up  diverged  wrongly shown");
    for (int arrows : new int[] {3, 5}) {
      for (int sign : new int[] {1, -1}) {
        String answer = sign > 0 ? "by the rule" : "against the rule";
        print(arrows, answer, "the plan", run(bows, sign, arrows, planned(ShopPrior.NONE)));
        ShopPrior prior = earlier(sign, arrows);
        String learnt = "the plan, 20 earlier bows";
        print(arrows, answer, learnt, run(bows, sign, arrows, planned(prior)));
        print(
            arrows,
            answer,
            "thumb, toward field points",
            run(bows, sign, arrows, () -> Technician.byThumb(1)));
        print(
            arrows,
            answer,
            "thumb, away from them",
            run(bows, sign, arrows, () -> Technician.byThumb(-1)));
        print(
            arrows,
            answer,
            "thumb, turning when worse",
            run(bows, sign, arrows, Technician::byThumbTurning));
      }
    }
  }

  private static void print(int arrows, String answer, String how, Outcome outcome) {
    Terminal.out()
        .printf(
            Locale.ROOT,
            "%d + %d   %-17s  %-30s  %6.1f  %4.1f  %4d  %8d  %8d  %13d%n",
            arrows,
            arrows,
            answer,
            how,
            outcome.median(),
            outcome.mean(),
            outcome.ninety(),
            outcome.notShown(),
            outcome.diverged(),
            outcome.wrong());
  }

  static Supplier<Technician> planned(ShopPrior prior) {
    return () -> Technician.following(SETUP, prior);
  }

  static ShopPrior earlier(int sign, int arrows) {
    List<Visit> visits = new ArrayList<>();
    for (int i = 0; i < EARLIER_BOWS; i++) {
      MadeBow bow = new MadeBow(EARLIER_SEEDS + i, sign);
      visits.add(MadeJob.tune(bow, arrows, planned(ShopPrior.NONE).get()).visit());
    }
    return ShopPrior.of(visits);
  }

  /** Tunes the bows of the seeds 1 to {@code bows}. */
  static Outcome run(int bows, int sign, int arrows, Supplier<Technician> technician) {
    int[] sheets = new int[bows];
    int notShown = 0;
    int diverged = 0;
    int wrong = 0;
    for (int i = 0; i < bows; i++) {
      MadeJob.Ending ending = MadeJob.tune(new MadeBow(i + 1, sign), arrows, technician.get());
      sheets[i] = ending.sheets();
      notShown += ending.shown() ? 0 : 1;
      wrong += ending.wronglyShown() ? 1 : 0;
      diverged += ending.farthest() > DIVERGED ? 1 : 0;
    }
    Arrays.sort(sheets);
    double median = (sheets[(bows - 1) / 2] + sheets[bows / 2]) / 2.0;
    int ninety = sheets[(int) Math.ceil(0.9 * bows) - 1];
    double mean = Arrays.stream(sheets).average().orElseThrow();
    return new Outcome(median, mean, ninety, notShown, diverged, wrong);
  }
}
