package sheaf.core.layout;

import java.util.Locale;

/** The kinds of sheet, by the trade's names. */
public enum SheetKind {
  /** The bow's measurements, intake inspection and notes. */
  BENCH_CARD('B'),
  /** Field points and broadheads compared. */
  PAIR('P');

  private final char letter;

  SheetKind(char letter) {
    this.letter = letter;
  }

  /** The one letter that stands for this kind in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** The name in commands and JSON, such as {@code bench-card}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
