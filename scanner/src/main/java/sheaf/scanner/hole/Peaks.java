package sheaf.scanner.hole;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.Rect;

/** The highest places of a map, each at least so high and the highest of all around it. */
final class Peaks {

  private final float[] heights;
  private final Rect part;
  private final int columns;
  private final int rows;
  private final int[] around;
  private final int reach;
  private final boolean[] top;

  private Peaks(float[] heights, Rect part, int[] around, int reach) {
    this.heights = heights;
    this.part = part;
    this.columns = part.width;
    this.rows = part.height;
    this.around = around;
    this.reach = reach;
    this.top = new boolean[heights.length];
  }

  /**
   * Finds them.
   *
   * @param map 32-bit, reduced by {@link Seeds#REDUCTION}: a part of the whole sheet's
   * @param part where it lies in that
   * @param least height of a peak
   * @param disc in which it is the highest: a square mask of an odd side
   * @return from the top down, in pixels of the whole sheet
   */
  static List<Seeds.Seed> of(Mat map, Rect part, double least, Mat disc) {
    float[] heights = new float[(int) map.total()];
    map.get(0, 0, heights);
    int reach = disc.rows() / 2;
    byte[] mask = new byte[(int) disc.total()];
    disc.get(0, 0, mask);
    List<Integer> around = new ArrayList<>();
    for (int i = 0; i < mask.length; i++) {
      if (mask[i] != 0) {
        around.add(i);
      }
    }
    int[] places = around.stream().mapToInt(Integer::intValue).toArray();
    return new Peaks(heights, part, places, reach).find((float) least);
  }

  private List<Seeds.Seed> find(float least) {
    for (int i = 0; i < heights.length; i++) {
      top[i] = heights[i] >= least && isHighest(i);
    }
    List<Seeds.Seed> peaks = new ArrayList<>();
    for (int i = 0; i < heights.length; i++) {
      if (top[i]) {
        peaks.add(middle(i));
      }
    }
    return peaks;
  }

  private boolean isHighest(int index) {
    int column = index % columns - reach;
    int row = index / columns - reach;
    int side = 2 * reach + 1;
    for (int place : around) {
      int x = column + place % side;
      int y = row + place / side;
      if (x >= 0
          && y >= 0
          && x < columns
          && y < rows
          && heights[y * columns + x] > heights[index]) {
        return false;
      }
    }
    return true;
  }

  /** The middle of all equally high places that hang together; takes them off the list. */
  private Seeds.Seed middle(int first) {
    Deque<Integer> next = new ArrayDeque<>();
    next.add(first);
    top[first] = false;
    double sumX = 0;
    double sumY = 0;
    int count = 0;
    while (!next.isEmpty()) {
      int index = next.remove();
      int x = index % columns;
      int y = index / columns;
      sumX += x;
      sumY += y;
      count++;
      for (int row = Math.max(0, y - 1); row <= Math.min(rows - 1, y + 1); row++) {
        for (int column = Math.max(0, x - 1); column <= Math.min(columns - 1, x + 1); column++) {
          int beside = row * columns + column;
          if (top[beside]) {
            top[beside] = false;
            next.add(beside);
          }
        }
      }
    }
    double x = sumX / count;
    double y = sumY / count;
    // Back to the middle of the block of pixels that was averaged.
    return new Seeds.Seed(
        (part.x + x + 0.5) * Seeds.REDUCTION - 0.5,
        (part.y + y + 0.5) * Seeds.REDUCTION - 0.5,
        heights[(int) y * columns + (int) x]);
  }
}
