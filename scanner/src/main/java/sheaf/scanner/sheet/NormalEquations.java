package sheaf.scanner.sheet;

/** Gauss's normal equations of weighted least squares, gathered row by row. */
final class NormalEquations {

  private final double[][] squares;
  private final double[] right;

  NormalEquations(int unknowns) {
    squares = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /** Adds that {@code row} times the unknowns should be {@code value}. */
  void add(double[] row, double value, double weight) {
    for (int i = 0; i < row.length; i++) {
      double weighted = weight * row[i];
      if (weighted != 0) {
        right[i] += weighted * value;
        for (int j = 0; j <= i; j++) {
          squares[i][j] += weighted * row[j];
        }
      }
    }
  }

  /**
   * Solves them (Cholesky's method).
   *
   * @param damping by what share each unknown's own weight is enlarged, to shorten the step
   */
  double[] solve(double damping) {
    int n = right.length;
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = squares[i][j] + (i == j ? damping * squares[i][i] + 1e-12 : 0);
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / lower[j][j];
      }
    }
    double[] solution = right.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        solution[i] -= lower[i][k] * solution[k];
      }
      solution[i] /= lower[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        solution[i] -= lower[k][i] * solution[k];
      }
      solution[i] /= lower[i][i];
    }
    return solution;
  }
}
