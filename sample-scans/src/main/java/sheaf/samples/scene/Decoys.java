package sheaf.samples.scene;

import java.util.random.RandomGenerator;

/**
 * What else is on a sheet and is no hole.
 *
 * @param notes written on the target
 * @param dots where a pen rested
 * @param staples that held the sheet
 * @param rings drawn around holes
 * @param strikes of a pen through holes
 * @param pins in the corners, up to four
 * @param wear that the sheet has seen
 */
public record Decoys(
    int notes, int dots, int staples, int rings, int strikes, int pins, Wear wear) {

  /** A clean sheet. */
  public static final Decoys NONE = new Decoys(0, 0, 0, 0, 0, 0, Wear.NONE);

  /**
   * Notes and pen dots on a third of the sheets each, staples on a tenth, rings on a twelfth, a
   * pen's line through a hole on an eighth.
   */
  public static Decoys draw(RandomGenerator random) {
    return new Decoys(
        random.nextInt(3) == 0 ? random.nextInt(1, 4) : 0,
        random.nextInt(3) == 0 ? random.nextInt(1, 4) : 0,
        random.nextInt(10) == 0 ? random.nextInt(1, 3) : 0,
        random.nextInt(12) == 0 ? random.nextInt(1, 3) : 0,
        random.nextInt(8) == 0 ? random.nextInt(1, 3) : 0,
        0,
        Wear.draw(random));
  }

  /** Nothing but what a sheet of a mix has seen. */
  public static Decoys worn(RandomGenerator random) {
    return new Decoys(0, 0, 0, 0, 0, 0, Wear.draw(random));
  }

  /** Pen dots and rings, nothing else. */
  public static Decoys ofPen(int notes, int dots, int rings) {
    return new Decoys(notes, dots, 0, rings, 0, 0, Wear.NONE);
  }

  /** The same on a sheet that is pinned to a board. */
  public Decoys pinned() {
    return new Decoys(notes, dots, staples, rings, strikes, 4, wear);
  }
}
