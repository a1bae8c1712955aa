package sheaf.samples.raster;

import java.util.random.RandomGenerator;

/** Smooth random numbers over a plane, about -1 to 1, without a visible grid. */
public final class Clouds {

  private static final int LATTICE = 64;

  private final double step;
  private final float[] lattice = new float[LATTICE * LATTICE];

  /**
   * Draws the clouds.
   *
   * @param size of a cloud, in the unit of the places asked for later
   */
  public Clouds(double size, RandomGenerator random) {
    step = 1 / size;
    for (int i = 0; i < lattice.length; i++) {
      lattice[i] = (float) random.nextDouble(-1, 1);
    }
  }

  /** The number at a place. */
  public float at(double x, double y) {
    double column = x * step + (1 << 20);
    double row = y * step + (1 << 20);
    int left = (int) column;
    int top = (int) row;
    float across = fade((float) (column - left));
    float down = fade((float) (row - top));
    float upper = between(left, top, across);
    float lower = between(left, top + 1, across);
    return upper + down * (lower - upper);
  }

  private float between(int column, int row, float share) {
    int base = (row & LATTICE - 1) * LATTICE;
    float left = lattice[base + (column & LATTICE - 1)];
    float right = lattice[base + (column + 1 & LATTICE - 1)];
    return left + share * (right - left);
  }

  /** Slopes are zero at the lattice's points, so that none is seen in the shading. */
  private static float fade(float t) {
    return t * t * (3 - 2 * t);
  }
}
