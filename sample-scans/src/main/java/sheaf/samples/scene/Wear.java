package sheaf.samples.scene;

import java.util.random.RandomGenerator;

/**
 * What a sheet went through besides arrows.
 *
 * @param punched whether it was put in a ring binder: two holes of ISO 838
 * @param misfed a punch's hole through a register mark
 * @param stains of grease or coffee
 * @param patches stuck over old holes
 * @param tornCorner whether a corner is torn off
 */
public record Wear(boolean punched, boolean misfed, int stains, int patches, boolean tornCorner) {

  /** A sheet fresh from the pad. */
  public static final Wear NONE = new Wear(false, false, 0, 0, false);

  /** Each on every sixth to sixteenth sheet. */
  static Wear draw(RandomGenerator random) {
    return new Wear(
        random.nextInt(8) == 0,
        random.nextInt(12) == 0,
        random.nextInt(6) == 0 ? random.nextInt(1, 4) : 0,
        random.nextInt(6) == 0 ? random.nextInt(1, 3) : 0,
        random.nextInt(16) == 0);
  }
}
