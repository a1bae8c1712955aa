package sheaf.samples.rim;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Conditional logit: of many candidates one is chosen, the likelier the higher its weighted sum of
 * features (McFadden, "Conditional logit analysis of qualitative choice behavior", 1974). With two
 * candidates, one of them all zeros, this is plain logistic regression.
 *
 * <p>Fitted by gradient descent with momentum (Adam; Kingma and Ba, 2015) on standardised features
 * with a small ridge, for the features of neighbouring bands say much the same.
 */
final class Logit {

  private static final double RIDGE = 2e-3;
  private static final int STEPS = 300;
  private static final double RATE = 0.06;

  private Logit() {}

  /**
   * A choice that was made.
   *
   * @param features of each candidate
   * @param share of the choice that falls on each; they sum to 1
   */
  record Choice(float[][] features, float[] share) {}

  /** The weights of the features. */
  static double[] fit(List<Choice> choices) {
    int features = choices.get(0).features()[0].length;
    double[] deviation = deviation(choices, features);
    double[] weights = new double[features];
    double[] mean = new double[features];
    double[] square = new double[features];
    for (int step = 1; step <= STEPS; step++) {
      double[] gradient = gradient(choices, weights, deviation);
      for (int i = 0; i < features; i++) {
        mean[i] = 0.9 * mean[i] + 0.1 * gradient[i];
        square[i] = 0.999 * square[i] + 0.001 * gradient[i] * gradient[i];
        double first = mean[i] / (1 - Math.pow(0.9, step));
        double second = square[i] / (1 - Math.pow(0.999, step));
        weights[i] -= RATE * first / (Math.sqrt(second) + 1e-8);
      }
    }
    return IntStream.range(0, features).mapToDouble(i -> weights[i] / deviation[i]).toArray();
  }

  private static double[] deviation(List<Choice> choices, int features) {
    double[] sum = new double[features];
    double[] squares = new double[features];
    long count = 0;
    for (Choice choice : choices) {
      for (float[] candidate : choice.features()) {
        for (int i = 0; i < features; i++) {
          sum[i] += candidate[i];
          squares[i] += candidate[i] * candidate[i];
        }
        count++;
      }
    }
    double[] deviation = new double[features];
    for (int i = 0; i < features; i++) {
      double mean = sum[i] / count;
      // A feature that hardly varies must not get a huge weight.
      deviation[i] = Math.sqrt(Math.max(0, squares[i] / count - mean * mean)) + 1e-3;
    }
    return deviation;
  }

  private static double[] gradient(List<Choice> choices, double[] weights, double[] deviation) {
    float[] raw = new float[weights.length];
    for (int i = 0; i < raw.length; i++) {
      raw[i] = (float) (weights[i] / deviation[i]);
    }
    double[] sum =
        choices.parallelStream()
            .collect(
                () -> new double[weights.length],
                (into, choice) -> add(choice, raw, into),
                (into, other) -> {
                  for (int i = 0; i < into.length; i++) {
                    into[i] += other[i];
                  }
                });
    for (int i = 0; i < sum.length; i++) {
      sum[i] = sum[i] / deviation[i] / choices.size() + RIDGE * weights[i];
    }
    return sum;
  }

  private static void add(Choice choice, float[] weights, double[] gradient) {
    double[] share = shares(choice.features(), weights);
    for (int c = 0; c < share.length; c++) {
      float residual = (float) (share[c] - choice.share()[c]);
      float[] features = choice.features()[c];
      for (int i = 0; i < features.length; i++) {
        gradient[i] += residual * features[i];
      }
    }
  }

  private static double[] shares(float[][] candidates, float[] weights) {
    double[] shares = new double[candidates.length];
    double highest = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < shares.length; c++) {
      shares[c] = dot(weights, candidates[c]);
      highest = Math.max(highest, shares[c]);
    }
    for (int c = 0; c < shares.length; c++) {
      shares[c] = Math.exp(shares[c] - highest);
    }
    double all = Arrays.stream(shares).sum();
    for (int c = 0; c < shares.length; c++) {
      shares[c] /= all;
    }
    return shares;
  }

  /** The weighted sum of features. */
  static float dot(float[] weights, float[] features) {
    float sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * features[i];
    }
    return sum;
  }
}
