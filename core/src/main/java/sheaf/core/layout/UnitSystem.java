package sheaf.core.layout;

/** The units that a sheet asks for, chosen when it is printed. */
public enum UnitSystem {
  /** Inches with sixteenths, pounds, yards, feet per second. */
  INCHES('I', "in"),
  /** Millimetres, pounds of draw weight (the trade's unit everywhere), metres. */
  METRIC('M', "metric");

  private final char letter;
  private final String label;

  UnitSystem(char letter, String label) {
    this.letter = letter;
    this.label = label;
  }

  /** The one letter that stands for these units in a sheet's code. */
  public char letter() {
    return letter;
  }

  /** The name in commands: {@code in}, {@code metric}. */
  public String label() {
    return label;
  }
}
