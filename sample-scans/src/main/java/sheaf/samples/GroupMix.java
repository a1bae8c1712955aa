package sheaf.samples;

import sheaf.core.layout.Variant;

/**
 * Flatbed scans of group sheets in mixed settings: a seed gives a scan. Their groups lie up to 20
 * mm off the spot; see {@link GridScene}.
 */
public final class GroupMix {

  private static final double FARTHEST_OFF = 20;

  private GroupMix() {}

  /** Makes the scan of a seed. */
  public static Sample make(long seed) {
    return FlatbedMix.make(
        seed,
        (random, behinds) -> GridScene.draw(random, Variant.GROUP_GRID, FARTHEST_OFF, behinds));
  }
}
