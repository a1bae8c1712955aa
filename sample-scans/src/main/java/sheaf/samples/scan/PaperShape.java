package sheaf.samples.scan;

import java.util.List;
import java.util.Optional;

/**
 * How a sheet stands off the board that it hangs on or lies on.
 *
 * @param bends that come together
 * @param dogEar a corner folded over, if there is one
 */
public record PaperShape(List<Bend> bends, Optional<DogEar> dogEar) {

  /** A sheet pressed flat. */
  public static final PaperShape FLAT = new PaperShape(List.of(), Optional.empty());

  /** Places along each side at which the sheet is looked for its lowest one. */
  private static final int ALONG = 24;

  /** Copies the list. */
  public PaperShape {
    bends = List.copyOf(bends);
  }

  /** A sheet with bends and no folded corner. */
  public static PaperShape of(Bend... bends) {
    return new PaperShape(List.of(bends), Optional.empty());
  }

  /**
   * A corner folded over onto the sheet, its blank back up.
   *
   * @param right whether it is one of the right corners
   * @param lower whether it is one of the lower ones
   * @param across how much of the sheet's upper or lower edge is folded, in millimetres
   * @param down how much of its side
   */
  public record DogEar(boolean right, boolean lower, double across, double down) {

    /** How far a place from the sheet's middle lies beyond the fold, in millimetres. */
    double beyond(double x, double y, double width, double height) {
      double fromSide = width / 2 - (right ? x : -x);
      double fromEdge = height / 2 - (lower ? y : -y);
      double length = Math.hypot(1 / across, 1 / down);
      return (1 - fromSide / across - fromEdge / down) / length;
    }

    /** Whether the folded part lies over a place: its mirror image is a part of the paper. */
    boolean covers(double x, double y, double width, double height) {
      double twice = -2 * beyond(x, y, width, height);
      if (twice < 0) {
        return false;
      }
      double length = Math.hypot(1 / across, 1 / down);
      double mx = x + twice * (right ? 1 : -1) / across / length;
      double my = y + twice * (lower ? 1 : -1) / down / length;
      return Math.abs(mx) < width / 2 && Math.abs(my) < height / 2;
    }
  }

  /** The bends on a sheet of a size: where each of its places is in space. */
  Surface on(double width, double height) {
    Surface resting = new Surface(bends, 0);
    double lowest = 0;
    double[] place = new double[3];
    for (int i = 0; i <= ALONG; i++) {
      for (int j = 0; j <= ALONG; j++) {
        resting.at(width * (i / (double) ALONG - 0.5), height * (j / (double) ALONG - 0.5), place);
        lowest = Math.min(lowest, place[2]);
      }
    }
    return new Surface(bends, -lowest);
  }

  /**
   * A sheet's surface.
   *
   * @param raised by how much its middle stands off the board, in millimetres
   */
  record Surface(List<Bend> bends, double raised) {

    /** Where a place of the sheet is, from its middle: across, down, and off the board. */
    void at(double x, double y, double[] place) {
      place[0] = x;
      place[1] = y;
      place[2] = raised;
      for (Bend bend : bends) {
        bend.move(x, y, place);
      }
    }
  }
}
