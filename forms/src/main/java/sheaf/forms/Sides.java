package sheaf.forms;

/** How many sides of a leaf are printed. */
public enum Sides {
  /** Every page on a leaf of its own. */
  ONE,
  /**
   * A card's back on the back of its front; blank pages keep the backs of all other sheets empty,
   * so that a whole pad can be printed on both sides.
   */
  BOTH
}
