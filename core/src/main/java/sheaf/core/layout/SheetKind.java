package sheaf.core.layout;

import java.util.Locale;

/** The kinds of sheet, by the trade's names. */
public enum SheetKind {
  /** The bow's measurements, intake inspection and notes. */
  BENCH_CARD('B'),
  /** Field points and broadheads compared. */
  PAIR('P'),
  /** Tears through paper, one shot a zone. */
  TEAR('T'),
  /** Impact along one upright line from near to far. */
  LINE('L'),
  /** One dot on a grid, for the size of a group. */
  GROUP('G'),
  /** One dot on a grid that says which way to move the sight. */
  SIGHT_IN('S'),
  /** A bench card beside the record's last values. */
  RETURN_CARD('R'),
  /** Rules across and down, to check a printer with. */
  SCALE('X'),
  /** How hard a bow pulls, from brace height to full draw. */
  FORCE_DRAW('F');

  private final char letter;

  SheetKind(char letter) {
    this.letter = letter;
  }

  /** The one letter that stands for this kind in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** Whether it is filled in at the bench: inspection and measures of the bow. */
  public boolean isCard() {
    return this == BENCH_CARD || this == RETURN_CARD;
  }

  /** Whether holes of field points and of broadheads are told from each other on it. */
  public boolean comparesHeads() {
    return this == PAIR;
  }

  /** The name in commands and JSON, such as {@code bench-card}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
