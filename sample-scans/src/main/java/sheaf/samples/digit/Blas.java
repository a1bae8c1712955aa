package sheaf.samples.digit;

import org.bytedeco.openblas.global.openblas;

/** Products of matrices that lie row by row in arrays, by OpenBLAS. */
final class Blas {

  private Blas() {}

  /** Sets {@code to} to a times b, of m x k and k x n. */
  static void multiply(float[] a, float[] b, float[] to, int m, int k, int n) {
    product(false, a, k, false, b, n, to, m, k, n);
  }

  /** Sets {@code to} to a times b turned over: a is m x k, b n x k. */
  static void timesTurned(float[] a, float[] b, float[] to, int m, int k, int n) {
    product(false, a, k, true, b, k, to, m, k, n);
  }

  /** Sets {@code to} to a turned over times b: a is k x m, b k x n. */
  static void turnedTimes(float[] a, float[] b, float[] to, int m, int k, int n) {
    product(true, a, m, false, b, n, to, m, k, n);
  }

  private static void product(
      boolean turnA,
      float[] a,
      int rowA,
      boolean turnB,
      float[] b,
      int rowB,
      float[] to,
      int m,
      int k,
      int n) {
    openblas.cblas_sgemm(
        openblas.CblasRowMajor,
        turnA ? openblas.CblasTrans : openblas.CblasNoTrans,
        turnB ? openblas.CblasTrans : openblas.CblasNoTrans,
        m,
        n,
        k,
        1,
        a,
        rowA,
        b,
        rowB,
        0,
        to,
        n);
  }
}
