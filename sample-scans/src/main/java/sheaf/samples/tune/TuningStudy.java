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
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.samples.tune.TuningStudy 1000}; a second number is
 * the first bow's seed. The plan was tried out on bows with seeds from two and three million on;
 * those from {@value #FIRST_SEED} on, which the table and the tests are of, were not looked at
 * before.
 */
public final class TuningStudy {

  /** Bows that a shop tuned before, for the plan that may learn from them. */
  private static final int EARLIER_BOWS = 20;

  private static final long EARLIER_SEEDS = 1_000_000;

  /** The first of the bows that are told of. */
  static final long FIRST_SEED = 4_000_001;

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
   * @param farthest that any bow's heads ever were apart, in the same measure
   * @param wrong bows whose heads were shown within an inch and truly were not
   */
  record Outcome(
      double median,
      double mean,
      int ninety,
      int notShown,
      int diverged,
      double farthest,
      int wrong) {}

  /**
   * Which bows.
   *
   * @param first seed
   * @param count of neighbouring seeds
   */
  record Bows(long first, int count) {}

  private TuningStudy() {}

  /** Prints the table; arguments say how many bows of each sort, and which is the first. */
  public static void main(String[] arguments) {
    int count = Integer.parseInt(arguments[0]);
    Bows bows = new Bows(arguments.length > 1 ? Long.parseLong(arguments[1]) : FIRST_SEED, count);
    Terminal.out()
        .println(
            "arrows  bows answer       tuned by                        median  mean  90 %  given up  diverged  farthest  wrongly shown");
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
            "%d + %d   %-17s  %-30s  %6.1f  %4.1f  %4d  %8d  %8d  %8.2f  %13d%n",
            arrows,
            arrows,
            answer,
            how,
            outcome.median(),
            outcome.mean(),
            outcome.ninety(),
            outcome.notShown(),
            outcome.diverged(),
            outcome.farthest(),
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

  /** Tunes bows that answer by the rule, with sign 1, or against it, with sign -1. */
  static Outcome run(Bows bows, int sign, int arrows, Supplier<Technician> technician) {
    int count = bows.count();
    int[] sheets = new int[count];
    int notShown = 0;
    int diverged = 0;
    int wrong = 0;
    double farthest = 0;
    for (int i = 0; i < count; i++) {
      MadeBow bow = new MadeBow(bows.first() + i, sign);
      MadeJob.Ending ending = MadeJob.tune(bow, arrows, technician.get());
      sheets[i] = ending.sheets();
      notShown += ending.shown() ? 0 : 1;
      wrong += ending.wronglyShown() ? 1 : 0;
      diverged += ending.farthest() > DIVERGED ? 1 : 0;
      farthest = Math.max(farthest, ending.farthest());
    }
    Arrays.sort(sheets);
    double median = (sheets[(count - 1) / 2] + sheets[count / 2]) / 2.0;
    int ninety = sheets[(int) Math.ceil(0.9 * count) - 1];
    double mean = Arrays.stream(sheets).average().orElseThrow();
    return new Outcome(median, mean, ninety, notShown, diverged, farthest, wrong);
  }
}
