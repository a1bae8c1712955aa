package sheaf.forms;

/**
 * The paper a finished card is printed on: half of the office's own, so that two fit a page.
 *
 * <p>A5 is ISO 216; half letter is ANSI/ASME Y14.1 size A, 11 in by 8.5 in, cut in two.
 */
public enum CardPaper {
  /** 5.5 in by 8.5 in. */
  HALF_LETTER(139.7, 215.9),
  /** 148 mm by 210 mm. */
  A5(148, 210);

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
