package sheaf.samples.digit;

/** The largest of each four places. */
final class Pool implements Layer {

  private final int channels;
  private final int side;
  private final int batch;
  private int[] chosen;

  /** Of so many channels, each so many places wide and high. */
  Pool(int channels, int side, int batch) {
    this.channels = channels;
    this.side = side;
    this.batch = batch;
  }

  @Override
  public float[] forward(float[] in, boolean learning) {
    int half = side / 2;
    float[] largest = new float[channels * half * half * batch];
    chosen = new int[largest.length];
    int line = side * batch;
    for (int to = 0; to < largest.length; to++) {
      int place = to / batch;
      int row = place / half;
      int first = row * 2 * line + (place % half) * 2 * batch + to % batch;
      int best = first;
      best = in[first + batch] > in[best] ? first + batch : best;
      best = in[first + line] > in[best] ? first + line : best;
      best = in[first + line + batch] > in[best] ? first + line + batch : best;
      chosen[to] = best;
      largest[to] = in[best];
    }
    return largest;
  }

  @Override
  public float[] backward(float[] slope) {
    float[] back = new float[slope.length * 4];
    for (int i = 0; i < slope.length; i++) {
      back[chosen[i]] = slope[i];
    }
    return back;
  }
}
