package sheaf.forms.draw;

/** Between millimetres on a page and the points of a PDF. */
public final class Mm {

  /** Millimetres in a point, which is 1/72 in (ISO 32000-1, 8.3.2.3). */
  public static final double PER_POINT = 25.4 / 72;

  private Mm() {}

  /** A length in points. */
  public static float points(double mm) {
    return (float) (mm / PER_POINT);
  }
}
