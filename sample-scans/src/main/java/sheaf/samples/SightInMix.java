package sheaf.samples;

import sheaf.core.layout.Variant;

/**
 * Flatbed scans of sight-in sheets in mixed settings: a seed gives a scan. Their groups lie up to
 * 40 mm off the spot; see {@link GridScene}.
 */
public final class SightInMix {

  private static final double FARTHEST_OFF = 40;

  private SightInMix() {}

  /** Makes the scan of a seed. */
  public static Sample make(long seed) {
    return FlatbedMix.make(
        seed,
        (random, behinds) -> GridScene.draw(random, Variant.SIGHT_GRID, FARTHEST_OFF, behinds));
  }
}
