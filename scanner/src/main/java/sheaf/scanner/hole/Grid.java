package sheaf.scanner.hole;

import java.util.function.Function;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import sheaf.scanner.opencv.Mats;

/**
 * A square of numbers cut from a map of the whole sheet, for the fine work around one hole. Places
 * are the whole sheet's, in pixels; beyond the square and the sheet it is zero.
 */
public final class Grid {

  /** One that is worked out where it is looked at is so by tiles of so many pixels a side. */
  private static final int TILE = 32;

  private final float[] values;
  private final int side;
  private final int left;
  private final int top;
  private final Function<Square, float[]> source;

  /** For each tile, whether its values are there; empty when all are. */
  private final boolean[] tiles;

  private Grid(
      float[] values,
      int side,
      int left,
      int top,
      Function<Square, float[]> source,
      boolean[] tiles) {
    this.values = values;
    this.side = side;
    this.left = left;
    this.top = top;
    this.source = source;
    this.tiles = tiles;
  }

  private Grid(float[] values, int side, int left, int top) {
    this(values, side, left, top, tile -> values, new boolean[0]);
  }

  /**
   * The values of a square, worked out where they are looked at; for one thread.
   *
   * @param source of the values in any square, row by row
   */
  static Grid lazily(Square square, Function<Square, float[]> source) {
    int across = square.side() / TILE + 1;
    return new Grid(
        new float[square.pixels()],
        square.side(),
        square.left(),
        square.top(),
        source,
        new boolean[across * across]);
  }

  /** The values of a square, row by row. */
  public Grid(Square square, float[] values) {
    this(values, square.side(), square.left(), square.top());
  }

  /** 1 where a square's pixels are set, else 0. */
  static Grid of(Square square, boolean[] set) {
    return new Grid(square, numbers(set));
  }

  /** 1 where it is set, else 0. */
  static float[] numbers(boolean[] set) {
    float[] numbers = new float[set.length];
    for (int i = 0; i < set.length; i++) {
      numbers[i] = set[i] ? 1 : 0;
    }
    return numbers;
  }

  /** Cuts the square that reaches so many pixels from a place; the map has one channel. */
  static Grid around(Mat map, double x, double y, double reach) {
    Square square = Square.around(x, y, reach);
    return cut(map, square.left(), square.top(), square.side());
  }

  /** A map that is zero everywhere. */
  public static Grid zero() {
    return new Grid(new float[1], 1, 0, 0);
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

  /** The value at a place between pixels, interpolated; zero outside. */
  public float at(double x, double y) {
    int column = (int) Math.floor(x) - left;
    int row = (int) Math.floor(y) - top;
    if (column < 0 || row < 0 || column + 1 >= side || row + 1 >= side) {
      return 0;
    }
    if (tiles.length > 0) {
      fill(column / TILE, row / TILE);
    }
    float fx = (float) (x - left - column);
    float fy = (float) (y - top - row);
    int i = row * side + column;
    float upper = values[i] + fx * (values[i + 1] - values[i]);
    float lower = values[i + side] + fx * (values[i + side + 1] - values[i + side]);
    return upper + fy * (lower - upper);
  }

  /** A tile has a column and a row of the next ones too, to interpolate with. */
  private void fill(int right, int down) {
    int tile = down * (side / TILE + 1) + right;
    if (tiles[tile]) {
      return;
    }
    tiles[tile] = true;
    int column = right * TILE;
    int row = down * TILE;
    Square square = new Square(left + column, top + row, TILE + 1);
    float[] own = source.apply(square);
    int width = Math.min(square.side(), side - column);
    for (int y = 0; y < Math.min(square.side(), side - row); y++) {
      System.arraycopy(own, y * square.side(), values, (row + y) * side + column, width);
    }
  }
}
