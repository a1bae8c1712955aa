package sheaf.core.layout;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * One register mark: an AprilTag of family 36h11 (Olson, "AprilTag: A robust and flexible visual
 * fiducial system", ICRA 2011).
 *
 * @param tag the tag's number in the family
 * @param square the black square, upright
 */
public record RegisterMark(int tag, MmRect square) {

  /** Cells along a side of the black square: six of data and a black border of one. */
  public static final int CELLS = 8;

  /** The corners of the black square: top left, top right, bottom right, bottom left. */
  public List<MmPoint> corners() {
    return List.of(
        new MmPoint(square.x(), square.y()),
        new MmPoint(square.right(), square.y()),
        new MmPoint(square.right(), square.bottom()),
        new MmPoint(square.x(), square.bottom()));
  }

  /** Side of one cell in millimetres; also the least width of the white border around the mark. */
  public double cell() {
    return square.width() / CELLS;
  }

  /** Whether a cell is white; row and column count from 0 to 7 from the top left. */
  public boolean white(int row, int column) {
    return TagFamily.white(tag, row, column);
  }
}
