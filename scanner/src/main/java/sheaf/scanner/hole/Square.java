package sheaf.scanner.hole;

import org.opencv.core.Mat;

/**
 * A square of pixels cut from a sheet; it may reach beyond.
 *
 * @param left column of the sheet where it begins
 * @param top row of the sheet where it begins
 * @param side in pixels
 */
public record Square(int left, int top, int side) {

  /** The square that reaches so many pixels from a place. */
  public static Square around(double x, double y, double reach) {
    int half = (int) Math.ceil(reach) + 1;
    return new Square((int) Math.round(x) - half, (int) Math.round(y) - half, 2 * half + 1);
  }

  /** The same with a margin of so many pixels all around. */
  Square grow(int margin) {
    return new Square(left - margin, top - margin, side + 2 * margin);
  }

  /** What it has in the middle, without a margin of so many pixels. */
  float[] middle(float[] values, int margin) {
    int inside = side - 2 * margin;
    float[] middle = new float[inside * inside];
    for (int y = 0; y < inside; y++) {
      System.arraycopy(values, (y + margin) * side + margin, middle, y * inside, inside);
    }
    return middle;
  }

  int pixels() {
    return side * side;
  }

  /** First column of the square, counted within it, that lies on a sheet. */
  int firstColumn() {
    return Math.max(0, -left);
  }

  /** Column of the square, counted within it, at which a sheet so many wide has ended. */
  int endColumn(int columns) {
    return Math.max(firstColumn(), Math.min(side, columns - left));
  }

  int firstRow() {
    return Math.max(0, -top);
  }

  int endRow(int rows) {
    return Math.max(firstRow(), Math.min(side, rows - top));
  }

  /** The bytes of a picture's pixels in this square, row by row; 0 beyond the picture. */
  byte[] bytes(Mat picture) {
    int channels = picture.channels();
    byte[] bytes = new byte[pixels() * channels];
    int first = firstColumn();
    byte[] row = new byte[(endColumn(picture.cols()) - first) * channels];
    for (int y = firstRow(); y < endRow(picture.rows()) && row.length > 0; y++) {
      picture.get(top + y, left + first, row);
      System.arraycopy(row, 0, bytes, (y * side + first) * channels, row.length);
    }
    return bytes;
  }

  /** The bytes of every so manieth pixel along and down, as far as the picture reaches. */
  byte[] some(Mat picture, int pitch) {
    int channels = picture.channels();
    int first = firstColumn();
    byte[] row = new byte[Math.max(0, endColumn(picture.cols()) - first) * channels];
    int columns = (row.length / channels + pitch - 1) / pitch;
    int rows = Math.max(0, (endRow(picture.rows()) - firstRow() + pitch - 1) / pitch);
    byte[] some = new byte[columns * rows * channels];
    for (int y = 0; y < rows && columns > 0; y++) {
      picture.get(top + firstRow() + y * pitch, left + first, row);
      for (int x = 0; x < columns; x++) {
        System.arraycopy(row, x * pitch * channels, some, (y * columns + x) * channels, channels);
      }
    }
    return some;
  }
}
