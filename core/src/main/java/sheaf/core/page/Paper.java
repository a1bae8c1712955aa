package sheaf.core.page;

import java.util.Locale;

/**
 * The paper a sheet is printed on, upright.
 *
 * <p>A4 is ISO 216; letter is ANSI/ASME Y14.1 size A (8.5 in by 11 in).
 */
public enum Paper {
  /** 8.5 in by 11 in. */
  LETTER(215.9, 279.4, 'L'),
  /** 210 mm by 297 mm. */
  A4(210, 297, 'A');

  private final double width;
  private final double height;
  private final char letter;

  Paper(double width, double height, char letter) {
    this.width = width;
    this.height = height;
    this.letter = letter;
  }

  /** Millimetres from left to right. */
  public double width() {
    return width;
  }

  /** Millimetres from top to bottom. */
  public double height() {
    return height;
  }

  /** The one letter that stands for this paper in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** The name in commands and JSON: {@code letter}, {@code a4}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
