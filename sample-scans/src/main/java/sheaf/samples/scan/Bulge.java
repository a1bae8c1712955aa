package sheaf.samples.scan;

/** Paper that is held at two edges and stands off the board between them. */
final class Bulge {

  private static final int STEPS = 1024;

  private final double rise;
  private final double span;
  private final double[] along = new double[STEPS + 1];

  /**
   * A bulge across a sheet.
   *
   * @param length of the paper between its edges, in millimetres
   * @param rise toward the camera in the middle, in millimetres
   */
  Bulge(double length, double rise) {
    this.rise = rise;
    double slope = Math.PI * rise / length;
    // To second order in the slope, which is small; what is left is spread evenly below.
    span = length * (1 - slope * slope / 4);
    for (int i = 1; i <= STEPS; i++) {
      double steep = slope(span * ((i - 0.5) / STEPS - 0.5));
      along[i] = along[i - 1] + Math.sqrt(1 + steep * steep);
    }
    double whole = along[STEPS];
    for (int i = 0; i <= STEPS; i++) {
      along[i] = length * (along[i] / whole - 0.5);
    }
  }

  /** Height over the board at a place from the sheet's middle. */
  double height(double place) {
    if (Math.abs(place) >= span / 2) {
      return 0;
    }
    double cos = Math.cos(Math.PI * place / span);
    return rise * cos * cos;
  }

  /** Slope at a place from the sheet's middle. */
  double slope(double place) {
    return Math.abs(place) >= span / 2
        ? 0
        : -rise * Math.PI / span * Math.sin(2 * Math.PI * place / span);
  }

  /** How far along the paper a place is, from its middle. */
  double onPaper(double place) {
    if (Math.abs(place) >= span / 2) {
      return place + Math.signum(place) * (along[STEPS] - span / 2);
    }
    double step = (place / span + 0.5) * STEPS;
    int before = Math.min(STEPS - 1, (int) step);
    return along[before] + (step - before) * (along[before + 1] - along[before]);
  }
}
