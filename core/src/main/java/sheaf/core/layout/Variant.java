package sheaf.core.layout;

import java.util.Arrays;
import sheaf.core.page.Paper;

/** The forms that one kind of sheet comes in. */
public enum Variant {
  /** Pair sheet with a dot for field points and a dot for broadheads. */
  TWO_DOTS(SheetKind.PAIR, '2', "two dots"),
  /** Pair sheet with one dot for both heads, told apart by their holes. */
  SHARED_DOT(SheetKind.PAIR, '1', "one shared dot"),
  /** The bench card's front: inspection and main measurements. */
  FRONT(SheetKind.BENCH_CARD, 'F', "front"),
  /** The bench card's back: the bow's other numbers, arrow, sight marks and notes. */
  BACK(SheetKind.BENCH_CARD, 'B', "back"),
  /** Front of a recurve's bench card. */
  RECURVE_FRONT(SheetKind.BENCH_CARD, 'R', "recurve front"),
  /** Back of a recurve's bench card. */
  RECURVE_BACK(SheetKind.BENCH_CARD, 'S', "recurve back"),
  /** Front of a crossbow's bench card. */
  CROSSBOW_FRONT(SheetKind.BENCH_CARD, 'C', "crossbow front"),
  /** Back of a crossbow's bench card. */
  CROSSBOW_BACK(SheetKind.BENCH_CARD, 'D', "crossbow back"),
  /** Front of the card for a compound that comes back. */
  RETURN_FRONT(SheetKind.RETURN_CARD, 'F', "front"),
  /** Its back. */
  RETURN_BACK(SheetKind.RETURN_CARD, 'B', "back"),
  /** Front of the card for a recurve that comes back. */
  RETURN_RECURVE_FRONT(SheetKind.RETURN_CARD, 'R', "recurve front"),
  /** Its back. */
  RETURN_RECURVE_BACK(SheetKind.RETURN_CARD, 'S', "recurve back"),
  /** Front of the card for a crossbow that comes back. */
  RETURN_CROSSBOW_FRONT(SheetKind.RETURN_CARD, 'C', "crossbow front"),
  /** Its back. */
  RETURN_CROSSBOW_BACK(SheetKind.RETURN_CARD, 'D', "crossbow back"),
  /** Tear sheet with four zones. */
  FOUR_ZONES(SheetKind.TEAR, '4', "four zones"),
  /** Line sheet whose distances are written by hand. */
  OPEN_DISTANCES(SheetKind.LINE, 'E', "distances to write in"),
  /** Line sheet whose distances are printed. */
  SET_DISTANCES(SheetKind.LINE, 'P', "distances printed"),
  /** Group sheet. */
  GROUP_GRID(SheetKind.GROUP, 'G', "grid"),
  /** Sight-in sheet. */
  SIGHT_GRID(SheetKind.SIGHT_IN, 'G', "grid"),
  /** Scale page. */
  CROSS(SheetKind.SCALE, 'X', "cross"),
  /** Force-draw sheet with a pull every inch, or every 25 mm. */
  PULLS(SheetKind.FORCE_DRAW, 'P', "pulls");

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

  /** Whether it belongs on the back of the card before it. */
  public boolean isBack() {
    return Arrays.stream(BowType.values())
        .anyMatch(bow -> this == bow.back() || this == bow.returnBack());
  }

  /** Whether there is a layout of it for a paper: targets come on all, cards on letter and A4. */
  public boolean comesOn(Paper paper) {
    return MarkFamily.has(this, paper);
  }

  /** In words. */
  public String label() {
    return label;
  }
}
