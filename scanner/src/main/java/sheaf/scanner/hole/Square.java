package sheaf.scanner.hole;

import org.opencv.core.Mat;

/**
 * A square of pixels cut from a sheet; it may reach beyond.
 *
 * @param left column of the sheet where it begins
 * @param top row of the sheet where it begins
 * @param side in pixels
 */
record Square(int left, int top, int side) {

  /** The square that reaches so many pixels from a place. */
  static Square around(double x, double y, double reach) {
    int half = (int) Math.ceil(reach) + 1;
    return new Square((int) Math.round(x) - half, (int) Math.round(y) - half, 2 * half + 1);
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
}
