package sheaf.samples.scan;

/** Numbers over a picture that change so slowly that straight lines between nodes are exact. */
final class SmoothMap {

  /** Pixels between nodes: paper bends by a few micrometres over this. */
  private static final int STEP = 12;

  /** Nodes beyond the picture, for samples of moved pixels. */
  private static final int BEYOND = 1;

  /** What the numbers are at a node. */
  @FunctionalInterface
  interface Values {
    /** Fills in the numbers of a place of the picture. */
    void at(double x, double y, float[] values);
  }

  private final int columns;
  private final int numbers;
  private final float[] nodes;

  /**
   * Asks for the numbers of all nodes, each next to the one before.
   *
   * @param numbers at each node
   */
  SmoothMap(int width, int height, int numbers, Values values) {
    this.numbers = numbers;
    columns = width / STEP + 2 + 2 * BEYOND;
    int rows = height / STEP + 2 + 2 * BEYOND;
    nodes = new float[columns * rows * numbers];
    float[] here = new float[numbers];
    for (int row = 0; row < rows; row++) {
      for (int i = 0; i < columns; i++) {
        int column = row % 2 == 0 ? i : columns - 1 - i;
        values.at((column - BEYOND) * (double) STEP, (row - BEYOND) * (double) STEP, here);
        System.arraycopy(here, 0, nodes, (row * columns + column) * numbers, numbers);
      }
    }
  }

  /**
   * Some of the numbers at a place.
   *
   * @param first of them
   * @param values takes as many as it has room for
   */
  void at(double x, double y, int first, float[] values) {
    double column = x / STEP + BEYOND;
    double row = y / STEP + BEYOND;
    int left = (int) column;
    int top = (int) row;
    float across = (float) (column - left);
    float down = (float) (row - top);
    int upper = (top * columns + left) * numbers + first;
    int lower = upper + columns * numbers;
    for (int k = 0; k < values.length; k++) {
      float above = nodes[upper + k];
      above += across * (nodes[upper + numbers + k] - above);
      float below = nodes[lower + k];
      below += across * (nodes[lower + numbers + k] - below);
      values[k] = above + down * (below - above);
    }
  }
}
