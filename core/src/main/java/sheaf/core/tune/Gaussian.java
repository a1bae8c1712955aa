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
   * What is known once a sum Σ wᵢxᵢ was measured.
   *
   * @param weights one for each number
   * @param measured what the sum came to
   * @param variance of the measurement, above zero
   */
  Gaussian seen(double[] weights, double measured, double variance) {
    double[] with = new double[mean.length];
    double expected = 0;
    double total = variance;
    for (int i = 0; i < mean.length; i++) {
      for (int j = 0; j < mean.length; j++) {
        with[i] += covariance[i][j] * weights[j];
      }
      expected += weights[i] * mean[i];
    }
    for (int i = 0; i < mean.length; i++) {
      total += weights[i] * with[i];
    }
    double[] newMean = mean.clone();
    double[][] newCovariance = new double[mean.length][mean.length];
    for (int i = 0; i < mean.length; i++) {
      newMean[i] += with[i] / total * (measured - expected);
      for (int j = 0; j < mean.length; j++) {
        newCovariance[i][j] = covariance[i][j] - with[i] * with[j] / total;
      }
    }
    return new Gaussian(newMean, newCovariance);
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
