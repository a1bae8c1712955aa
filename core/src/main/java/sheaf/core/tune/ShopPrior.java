package sheaf.core.tune;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.page.MmVector;
import sheaf.core.record.Visit;

/**
 * What a shop's earlier bows of the same kind teach of each lever, before a bow's own first move.
 *
 * <p>Bows differ, so the next one is expected to respond as the earlier ones did on average, give
 * or take the deviation between bows. That is estimated as R. DerSimonian and N. Laird do
 * (Meta-analysis in clinical trials, Controlled Clinical Trials 7, 1986), mixed with two imagined
 * bows half the usual deviation apart, so that few bows that happen to agree do not make it too
 * small.
 */
public final class ShopPrior {

  /** Nothing is known. */
  public static final ShopPrior NONE = new ShopPrior(Map.of(), 0);

  private static final int IMAGINED_BOWS = 2;

  /** What one bow showed in one direction. */
  private record Shown(double mean, double variance) {}

  private final Map<Lever, Response> responses;
  private final int bows;

  private ShopPrior(Map<Lever, Response> responses, int bows) {
    this.responses = Map.copyOf(responses);
    this.bows = bows;
  }

  /**
   * What some visits of bows of one kind teach.
   *
   * @param visits any; those without a counted move between two pair sheets teach nothing
   */
  public static ShopPrior of(List<Visit> visits) {
    Map<Lever, List<Response>> shown = new HashMap<>();
    int bows = 0;
    for (Visit visit : visits) {
      Map<Lever, Response> own = shownBy(Trials.of(visit));
      own.forEach(
          (lever, answer) -> shown.computeIfAbsent(lever, l -> new ArrayList<>()).add(answer));
      bows += own.isEmpty() ? 0 : 1;
    }
    Map<Lever, Response> responses = new HashMap<>();
    shown.forEach((lever, answers) -> responses.put(lever, next(lever, answers)));
    return new ShopPrior(responses, bows);
  }

  /** What each lever is expected to do. */
  Response of(Lever lever) {
    return responses.getOrDefault(lever, Response.unknown(lever));
  }

  /** How many earlier bows taught something. */
  public int bows() {
    return bows;
  }

  /** What a bow's own sheets show of its levers, without what was assumed beforehand. */
  private static Map<Lever, Response> shownBy(Trials trials) {
    Optional<Scatter> scatter = trials.scatter();
    Map<Lever, Response> shown = new HashMap<>();
    if (scatter.isEmpty()) {
      return shown;
    }
    BowModel bow = trials.course(BowModel.start(trials.moved(), NONE, scatter.get())).bow();
    for (Lever lever : trials.moved()) {
      Response unknown = Response.unknown(lever);
      Response learnt = bow.response(lever);
      Optional<Shown> right =
          without(learnt.perStep().dx(), learnt.rightDeviation(), unknown.rightDeviation());
      Optional<Shown> down =
          without(learnt.perStep().dy(), learnt.downDeviation(), unknown.downDeviation());
      if (right.isPresent() && down.isPresent()) {
        shown.put(lever, response(right.get(), down.get()));
      }
    }
    return shown;
  }

  /** A posterior divided by a prior of mean zero; empty when it has learnt next to nothing. */
  private static Optional<Shown> without(double mean, double deviation, double prior) {
    double precision = 1 / (deviation * deviation) - 1 / (prior * prior);
    double leastWorth = 0.1 / (prior * prior);
    return precision > leastWorth
        ? Optional.of(new Shown(mean / (deviation * deviation) / precision, 1 / precision))
        : Optional.empty();
  }

  private static Response response(Shown right, Shown down) {
    return new Response(
        new MmVector(right.mean(), down.mean()),
        Math.sqrt(right.variance()),
        Math.sqrt(down.variance()));
  }

  private static Response next(Lever lever, List<Response> answers) {
    Response unknown = Response.unknown(lever);
    return response(
        next(
            answers.stream()
                .map(a -> new Shown(a.perStep().dx(), square(a.rightDeviation())))
                .toList(),
            unknown.rightDeviation()),
        next(
            answers.stream()
                .map(a -> new Shown(a.perStep().dy(), square(a.downDeviation())))
                .toList(),
            unknown.downDeviation()));
  }

  private static Shown next(List<Shown> bows, double usual) {
    double between = between(bows, usual);
    double weights = 0;
    double sum = 0;
    for (Shown bow : bows) {
      double weight = 1 / (bow.variance() + between);
      weights += weight;
      sum += weight * bow.mean();
    }
    // The mean of these bows is drawn toward nothing as far as a bow without any data would be.
    double prior = 1 / (usual * usual);
    return new Shown(sum / (weights + prior), between + 1 / (weights + prior));
  }

  private static double between(List<Shown> bows, double usual) {
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (Shown bow : bows) {
      weights += 1 / bow.variance();
      squares += square(1 / bow.variance());
      sum += bow.mean() / bow.variance();
    }
    double mean = sum / weights;
    double q = bows.stream().mapToDouble(b -> square(b.mean() - mean) / b.variance()).sum();
    int freedom = bows.size() - 1;
    double scale = weights - squares / weights;
    double estimate = freedom > 0 && scale > 0 ? Math.max(0, (q - freedom) / scale) : 0;
    double imagined = square(usual / 2);
    return (estimate * freedom + imagined * IMAGINED_BOWS) / (freedom + IMAGINED_BOWS);
  }

  private static double square(double value) {
    return value * value;
  }
}
