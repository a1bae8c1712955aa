package sheaf.core.layout;

/** The forms that one kind of sheet comes in. */
public enum Variant {
  /** Pair sheet with a dot for field points and a dot for broadheads. */
  TWO_DOTS(SheetKind.PAIR, '2', "two dots"),
  /** Pair sheet with one dot for both heads, told apart by their holes. */
  SHARED_DOT(SheetKind.PAIR, '1', "one shared dot"),
  /** The bench card's front: inspection and main measurements. */
  FRONT(SheetKind.BENCH_CARD, 'F', "front");

  private final SheetKind kind;
  private final char letter;
  private final String label;

  Variant(SheetKind kind, char letter, String label) {
    this.kind = kind;
    this.letter = letter;
    this.label = label;
  }

  /** The kind of sheet this is a form of. */
  public SheetKind kind() {
    return kind;
  }

  /** The one letter or digit that stands for this variant in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
