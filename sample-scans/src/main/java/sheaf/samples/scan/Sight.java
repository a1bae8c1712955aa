package sheaf.samples.scan;

/** What a camera sees where: from places of a sheet and its board to places of the picture. */
final class Sight {

  private static final int STEPS = 8;

  /** Steps from the sheet's middle to a far place. */
  private static final int WALK = 12;

  /** Near enough, in pixels. */
  private static final double NEAR = 1e-3;

  /** A step on the sheet to see how the picture changes, in millimetres. */
  private static final double SMALL = 0.01;

  /** Places farther than this, in millimetres, are not looked for: that is the horizon. */
  private static final double FAR = 3000;

  private final double[][] axes;
  private final double[] camera;
  private final Lens lens;
  private final double focal;
  private final double middleX;
  private final double middleY;

  Sight(Pose pose, Lens lens, int width, int height, double sheetWidth, double sheetHeight) {
    this.lens = lens;
    focal = lens.focal() * Math.max(width, height);
    axes = pose.axes();
    camera = pose.place(width, height, sheetWidth, sheetHeight, focal);
    middleX = width / 2.0;
    middleY = height / 2.0;
  }

  /** Where the camera stands, in millimetres from the sheet's middle; z leads into the board. */
  double[] camera() {
    return camera.clone();
  }

  /** Where a place of a surface is seen, in pixels from the picture's corner. */
  void project(PaperShape.Surface surface, double x, double y, double[] space, double[] pixel) {
    surface.at(x, y, space);
    double dx = space[0] - camera[0];
    double dy = space[1] - camera[1];
    double dz = -space[2] - camera[2];
    double ahead = axes[2][0] * dx + axes[2][1] * dy + axes[2][2] * dz;
    double right = (axes[0][0] * dx + axes[0][1] * dy + axes[0][2] * dz) / ahead;
    double down = (axes[1][0] * dx + axes[1][1] * dy + axes[1][2] * dz) / ahead;
    double stretch = focal * lens.stretch(right * right + down * down);
    pixel[0] = middleX + stretch * right;
    pixel[1] = middleY + stretch * down;
  }

  /**
   * Finds which place of a surface is seen at a pixel.
   *
   * @param place a first guess, and the result; millimetres from the sheet's middle
   */
  void find(PaperShape.Surface surface, double px, double py, double[] place) {
    if (approach(surface, px, py, place)) {
      return;
    }
    // The guess was too far off: walk there from the sheet's middle.
    place[0] = 0;
    place[1] = 0;
    double[] from = new double[2];
    project(surface, 0, 0, new double[3], from);
    for (int i = 1; i <= WALK; i++) {
      double share = i / (double) WALK;
      approach(surface, from[0] + share * (px - from[0]), from[1] + share * (py - from[1]), place);
    }
  }

  /** Newton's method; whether it came there. */
  private boolean approach(PaperShape.Surface surface, double px, double py, double[] place) {
    double[] space = new double[3];
    double[] at = new double[2];
    double[] right = new double[2];
    double[] down = new double[2];
    for (int i = 0; i < STEPS; i++) {
      project(surface, place[0], place[1], space, at);
      double dx = px - at[0];
      double dy = py - at[1];
      if (Math.hypot(dx, dy) < NEAR) {
        return true;
      }
      project(surface, place[0] + SMALL, place[1], space, right);
      project(surface, place[0], place[1] + SMALL, space, down);
      double a = right[0] - at[0];
      double b = down[0] - at[0];
      double c = right[1] - at[1];
      double d = down[1] - at[1];
      double determinant = a * d - b * c;
      place[0] = within(place[0] + SMALL * (d * dx - b * dy) / determinant);
      place[1] = within(place[1] + SMALL * (a * dy - c * dx) / determinant);
    }
    return false;
  }

  private static double within(double place) {
    return Double.isNaN(place) ? FAR : Math.max(-FAR, Math.min(FAR, place));
  }
}
