package sheaf.core.page;

import java.util.Locale;

/**
 * The paper a sheet is printed on, upright.
 *
 * <p>A4 and A3 are ISO 216; letter and tabloid are ANSI/ASME Y14.1 sizes A and B (8.5 in by 11 in,
 * 11 in by 17 in).
 */
public enum Paper {
  /** 8.5 in by 11 in. */
  LETTER(215.9, 279.4, 'L'),
  /** 210 mm by 297 mm. */
  A4(210, 297, 'A'),
  /** 11 in by 17 in. */
  TABLOID(279.4, 431.8, 'T'),
  /** 297 mm by 420 mm. */
  A3(297, 420, '3');

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

  /** The paper of the same system that fits every printer: letter or A4. */
  public Paper small() {
    return this == TABLOID ? LETTER : this == A3 ? A4 : this;
  }

  /** The name in commands and JSON: {@code letter}, {@code a3}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
