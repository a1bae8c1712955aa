package sheaf.scanner.hole;

import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import sheaf.scanner.opencv.Mats;

/**
 * A square of numbers cut from a map of the whole sheet, for the fine work around one hole. Places
 * are the whole sheet's, in pixels; beyond the square and the sheet it is zero.
 */
final class Grid {

  private final float[] values;
  private final int side;
  private final int left;
  private final int top;

  private Grid(float[] values, int side, int left, int top) {
    this.values = values;
    this.side = side;
    this.left = left;
    this.top = top;
  }

  /** The values of a square, row by row. */
  Grid(Square square, float[] values) {
    this(values, square.side(), square.left(), square.top());
  }

  /** 1 where a square's pixels are set, else 0. */
  static Grid of(Square square, boolean[] set) {
    float[] values = new float[set.length];
    for (int i = 0; i < set.length; i++) {
      values[i] = set[i] ? 1 : 0;
    }
    return new Grid(square, values);
  }

  /** Cuts the square that reaches so many pixels from a place; the map has one channel. */
  static Grid around(Mat map, double x, double y, double reach) {
    Square square = Square.around(x, y, reach);
    return cut(map, square.left(), square.top(), square.side());
  }

  /** A map that is zero everywhere. */
  static Grid zero() {
    return new Grid(new float[1], 1, 0, 0);
  }

  /** The same of a map that was itself cut from the whole sheet's, from a column and row on. */
  Grid cutFrom(int column, int row) {
    return new Grid(values, side, left + column, top + row);
  }

  private static Grid cut(Mat map, int left, int top, int side) {
    Rect wanted = new Rect(left, top, side, side);
    int x0 = Math.max(0, left);
    int y0 = Math.max(0, top);
    int x1 = Math.min(map.cols(), wanted.x + side);
    int y1 = Math.min(map.rows(), wanted.y + side);
    float[] values = new float[side * side];
    if (x1 > x0 && y1 > y0) {
      try (Mats mats = new Mats()) {
        Mat part = mats.own(map.submat(y0, y1, x0, x1));
        Mat whole = mats.mat();
        Core.copyMakeBorder(
            part,
            whole,
            y0 - top,
            top + side - y1,
            x0 - left,
            left + side - x1,
            Core.BORDER_CONSTANT | Core.BORDER_ISOLATED);
        Mat floats = mats.mat();
        whole.convertTo(floats, CvType.CV_32F);
        floats.get(0, 0, values);
      }
    }
    return new Grid(values, side, left, top);
  }

  /** At each place the larger of two squares cut alike. */
  Grid or(Grid other) {
    float[] both = new float[values.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = Math.max(values[i], other.values[i]);
    }
    return new Grid(both, side, left, top);
  }

  /** The value at a place between pixels, interpolated; zero outside. */
  float at(double x, double y) {
    int column = (int) Math.floor(x) - left;
    int row = (int) Math.floor(y) - top;
    if (column < 0 || row < 0 || column + 1 >= side || row + 1 >= side) {
      return 0;
    }
    float fx = (float) (x - left - column);
    float fy = (float) (y - top - row);
    int i = row * side + column;
    float upper = values[i] + fx * (values[i + 1] - values[i]);
    float lower = values[i + side] + fx * (values[i + side + 1] - values[i + side]);
    return upper + fy * (lower - upper);
  }
}
