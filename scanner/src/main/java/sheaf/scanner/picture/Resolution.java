package sheaf.scanner.picture;

/**
 * The resolution that a file states for itself, in pixels per millimetre on the scanned glass.
 *
 * @param across along the picture's rows
 * @param down along its columns
 */
public record Resolution(double across, double down) {

  private static final double MM_PER_INCH = 25.4;

  /** From dots per inch. */
  public static Resolution ofDpi(double across, double down) {
    return new Resolution(across / MM_PER_INCH, down / MM_PER_INCH);
  }
}
