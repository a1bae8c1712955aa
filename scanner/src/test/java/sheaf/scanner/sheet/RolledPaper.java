package sheaf.scanner.sheet;

import org.opencv.core.Point;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

/**
 * A sheet wrapped around a round roll and seen by a pinhole camera, computed exactly and in another
 * way than the reader does it.
 *
 * @param radius of the roll in millimetres
 * @param direction in which the paper bends, in radians
 * @param tilt of the camera, in radians
 * @param toward direction of the tilt, in radians
 * @param roll of the sheet in the picture, in radians
 * @param focal length in pixels
 * @param barrel the lens's distortion one focal length from the middle
 */
record RolledPaper(
    Paper paper,
    double radius,
    double direction,
    double tilt,
    double toward,
    double roll,
    double focal,
    double barrel)
    implements PageMap {

  static final int WIDTH = 3000;
  static final int HEIGHT = 4000;

  /** Of the camera from the sheet's middle, in millimetres. */
  private static final double DISTANCE = 380;

  @Override
  public Point toPixel(MmPoint place) {
    double x = place.x() - paper.width() / 2;
    double y = place.y() - paper.height() / 2;
    double across = x * Math.cos(direction) + y * Math.sin(direction);
    double along = -x * Math.sin(direction) + y * Math.cos(direction);
    double onBoard = radius * Math.sin(across / radius);
    double up = radius * (1 - Math.cos(across / radius));
    double[] at = {
      onBoard * Math.cos(direction) - along * Math.sin(direction),
      onBoard * Math.sin(direction) + along * Math.cos(direction),
      -up
    };
    turn(at, 0, 1, roll);
    turn(at, 0, 1, -toward);
    turn(at, 1, 2, tilt);
    turn(at, 0, 1, toward);
    double scale = DISTANCE * focal / WIDTH;
    double right = at[0] / (at[2] + scale);
    double down = at[1] / (at[2] + scale);
    double drawn = focal * (1 + barrel * (right * right + down * down));
    return new Point((WIDTH - 1) / 2.0 + drawn * right, (HEIGHT - 1) / 2.0 + drawn * down);
  }

  private static void turn(double[] at, int a, int b, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double first = at[a] * cos - at[b] * sin;
    at[b] = at[a] * sin + at[b] * cos;
    at[a] = first;
  }
}
