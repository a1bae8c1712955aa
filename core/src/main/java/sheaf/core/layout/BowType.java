package sheaf.core.layout;

import java.util.Locale;

/** The kinds of bow that have a bench card of their own. */
public enum BowType {
  /** With cams. */
  COMPOUND(Variant.FRONT, Variant.BACK, Variant.RETURN_FRONT, Variant.RETURN_BACK),
  /** Without cams; longbows too. */
  RECURVE(
      Variant.RECURVE_FRONT,
      Variant.RECURVE_BACK,
      Variant.RETURN_RECURVE_FRONT,
      Variant.RETURN_RECURVE_BACK),
  /** On a stock, with a trigger. */
  CROSSBOW(
      Variant.CROSSBOW_FRONT,
      Variant.CROSSBOW_BACK,
      Variant.RETURN_CROSSBOW_FRONT,
      Variant.RETURN_CROSSBOW_BACK);

  private final Variant front;
  private final Variant back;
  private final Variant returnFront;
  private final Variant returnBack;

  BowType(Variant front, Variant back, Variant returnFront, Variant returnBack) {
    this.front = front;
    this.back = back;
    this.returnFront = returnFront;
    this.returnBack = returnBack;
  }

  /** Front of its bench card. */
  public Variant front() {
    return front;
  }

  /** Back of its bench card. */
  public Variant back() {
    return back;
  }

  /** Front of its return card. */
  public Variant returnFront() {
    return returnFront;
  }

  /** Back of its return card. */
  public Variant returnBack() {
    return returnBack;
  }

  /** The name in commands: {@code compound}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The bow that a variant of a card is for; throws for a sheet that is no card. */
  static BowType of(Variant card) {
    for (BowType bow : values()) {
      if (card == bow.front
          || card == bow.back
          || card == bow.returnFront
          || card == bow.returnBack) {
        return bow;
      }
    }
    throw new IllegalArgumentException("no card: " + card);
  }
}
