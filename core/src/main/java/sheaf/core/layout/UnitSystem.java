package sheaf.core.layout;

/** The units that a sheet asks for, chosen when it is printed. */
public enum UnitSystem {
  /** Inches with sixteenths, pounds, yards, feet per second. */
  INCHES('I', "in", 25.4),
  /** Millimetres, pounds of draw weight (the trade's unit everywhere), metres. */
  METRIC('M', "metric", 20);

  private final char letter;
  private final String label;
  private final double gridSquareMm;

  UnitSystem(char letter, String label, double gridSquareMm) {
    this.letter = letter;
    this.label = label;
    this.gridSquareMm = gridSquareMm;
  }

  /** The one letter that stands for these units in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** The name in commands: {@code in}, {@code metric}. */
  public String label() {
    return label;
  }

  /** Side of a square of a printed grid, in millimetres: one inch, or two centimetres. */
  public double gridSquareMm() {
    return gridSquareMm;
  }
}
