package sheaf.samples.hole;

/** A hole's fold and torn edge, looked up by angle. */
final class Rim {

  private static final int BINS = 2048;

  private final Flap[] flaps = new Flap[BINS];
  private final float[] folds = new float[BINS];
  private final float[] edges = new float[BINS];

  Rim(TornHole hole) {
    for (Flap flap : hole.flaps()) {
      int first = (int) Math.floor(flap.from() / (2 * Math.PI) * BINS);
      int last = (int) Math.floor(flap.to() / (2 * Math.PI) * BINS);
      for (int i = first; i <= last; i++) {
        double t = (i * 2 * Math.PI / BINS - flap.from()) / (flap.to() - flap.from());
        double step = Math.max(0, Math.min(1, t)) * Flap.STEPS;
        int before = Math.min(Flap.STEPS - 1, (int) step);
        double within = step - before;
        int bin = Math.floorMod(i, BINS);
        flaps[bin] = flap;
        folds[bin] =
            (float)
                (hole.radius()
                    * (flap.fold(before) * (1 - within) + flap.fold(before + 1) * within));
        edges[bin] =
            (float)
                (hole.radius()
                    * (flap.edge(before) * (1 - within) + flap.edge(before + 1) * within));
      }
    }
  }

  static int bin(double x, double y) {
    return Math.floorMod((int) Math.floor(Math.atan2(y, x) / (2 * Math.PI) * BINS), BINS);
  }

  Flap flap(int bin) {
    return flaps[bin];
  }

  /** Distance of the fold from the axis. */
  float fold(int bin) {
    return folds[bin];
  }

  /** Distance of the torn edge from the axis. */
  float edge(int bin) {
    return edges[bin];
  }
}
