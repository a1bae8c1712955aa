package sheaf.core.tune;

/**
 * What is known of several numbers at once: a normal distribution, by its mean and covariance.
 * Immutable.
 *
 * <p>Learning from a measured combination of the numbers is one step of R. E. Kalman's filter (A
 * new approach to linear filtering and prediction problems, Journal of Basic Engineering 82, 1960);
 * started from next to no knowledge it gives what weighted least squares give.
 */
final class Gaussian {

  private final double[] mean;
  private final double[][] covariance;

  private Gaussian(double[] mean, double[][] covariance) {
    this.mean = mean;
    this.covariance = covariance;
  }

  /** Numbers that say nothing of each other yet. */
  static Gaussian independent(double[] mean, double[] deviations) {
    double[][] covariance = new double[mean.length][mean.length];
    for (int i = 0; i < mean.length; i++) {
      covariance[i][i] = deviations[i] * deviations[i];
    }
    return new Gaussian(mean.clone(), covariance);
  }

  double mean(int i) {
    return mean[i];
  }

  double covariance(int i, int j) {
    return covariance[i][j];
  }

  double deviation(int i) {
    return Math.sqrt(covariance[i][i]);
  }

  /**
   * What is known once a sum Σ wᵢxᵢ was measured. The covariance is made in the form of P. Joseph,
   * which keeps its digits where next to nothing was known before (R. Bucy and P. Joseph, Filtering
   * for Stochastic Processes, 1968).
   *
   * @param weights one for each number
   * @param measured what the sum came to
   * @param variance of the measurement, above zero
   */
  Gaussian seen(double[] weights, double measured, double variance) {
    double[] gain = new double[mean.length];
    double expected = 0;
    double total = variance;
    for (int i = 0; i < mean.length; i++) {
      for (int j = 0; j < mean.length; j++) {
        gain[i] += covariance[i][j] * weights[j];
      }
      expected += weights[i] * mean[i];
    }
    for (int i = 0; i < mean.length; i++) {
      total += weights[i] * gain[i];
    }
    double[] newMean = mean.clone();
    for (int i = 0; i < mean.length; i++) {
      gain[i] /= total;
      newMean[i] += gain[i] * (measured - expected);
    }
    return new Gaussian(newMean, joseph(gain, weights, variance));
  }

  /** (I - k w') P (I - k w')' + k k' variance. */
  private double[][] joseph(double[] gain, double[] weights, double variance) {
    double[][] half = new double[mean.length][];
    for (int j = 0; j < mean.length; j++) {
      half[j] = kept(covariance[j], gain, weights);
    }
    double[][] result = new double[mean.length][mean.length];
    for (int i = 0; i < mean.length; i++) {
      double[] column = new double[mean.length];
      for (int j = 0; j < mean.length; j++) {
        column[j] = half[j][i];
      }
      result[i] = kept(column, gain, weights);
      for (int j = 0; j < mean.length; j++) {
        result[i][j] += gain[i] * gain[j] * variance;
      }
    }
    return result;
  }

  /** (I - k w') v: what a gain leaves of a vector, each factor by itself before any difference. */
  private static double[] kept(double[] vector, double[] gain, double[] weights) {
    double[] kept = new double[vector.length];
    for (int i = 0; i < vector.length; i++) {
      for (int j = 0; j < vector.length; j++) {
        kept[i] += ((i == j ? 1 : 0) - gain[i] * weights[j]) * vector[j];
      }
    }
    return kept;
  }

  /**
   * What is known once a multiple of one number was added to another, with some noise.
   *
   * @param to the number that changes
   * @param from the number that is added, another one
   * @param times how many times it is added
   * @param variance of the noise, zero or more
   */
  Gaussian added(int to, int from, double times, double variance) {
    double[] newMean = mean.clone();
    double[][] changed = copy();
    newMean[to] += times * mean[from];
    for (int i = 0; i < mean.length; i++) {
      changed[to][i] += times * covariance[from][i];
    }
    for (int i = 0; i < mean.length; i++) {
      changed[i][to] += times * changed[i][from];
    }
    changed[to][to] += variance;
    return new Gaussian(newMean, changed);
  }

  /** What is known once one number has become another that nothing is known of. */
  Gaussian forgotten(int which, double newMean, double deviation) {
    double[] means = mean.clone();
    double[][] changed = copy();
    means[which] = newMean;
    for (int i = 0; i < mean.length; i++) {
      changed[which][i] = 0;
      changed[i][which] = 0;
    }
    changed[which][which] = deviation * deviation;
    return new Gaussian(means, changed);
  }

  private double[][] copy() {
    double[][] copy = new double[covariance.length][];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = covariance[i].clone();
    }
    return copy;
  }
}
