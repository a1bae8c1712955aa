package sheaf.forms;

/**
 * The paper a finished card is printed on: a page, or half of it so that two cards fit.
 *
 * <p>A4 and A5 are ISO 216; letter is ANSI/ASME Y14.1 size A, 8.5 in by 11 in, and half letter is
 * that cut in two.
 */
public enum CardPaper {
  /** 5.5 in by 8.5 in. */
  HALF_LETTER(139.7, 215.9),
  /** 148 mm by 210 mm. */
  A5(148, 210),
  /** 8.5 in by 11 in. */
  LETTER(215.9, 279.4),
  /** 210 mm by 297 mm. */
  A4(210, 297);

  private final double width;
  private final double height;

  CardPaper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Millimetres from left to right. */
  public double width() {
    return width;
  }

  /** Millimetres from top to bottom. */
  public double height() {
    return height;
  }
}
