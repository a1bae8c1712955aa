package sheaf.core.picture;

import java.util.List;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Shape.Side;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;

/**
 * A bar that tells a picture's scale.
 *
 * @param label its true length with the unit
 * @param length in the picture, in millimetres
 */
record ScaleBar(String label, double length) {

  private static final double INSET = 3;
  private static final double TICK = 1.2;
  private static final double SIZE = 7.5;

  /** A digit or letter of that size takes about this much, in millimetres. */
  private static final double LETTER = 1.5;

  /** The bar fills at most this share of the picture's width. */
  private static final double WIDEST = 0.4;

  /** The longest round length that fits. */
  static ScaleBar fit(UnitSystem units, double perMm, double width) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.INCH : Unit.MILLIMETRE;
    List<Double> lengths =
        inches ? List.of(8.0, 4.0, 2.0, 1.0, 0.5) : List.of(200.0, 100.0, 50.0, 20.0, 10.0);
    for (double length : lengths) {
      double inPicture = unit.convert(length, Unit.MILLIMETRE) * perMm;
      if (inPicture <= WIDEST * width) {
        return new ScaleBar(label(length, unit), inPicture);
      }
    }
    double shortest = lengths.get(lengths.size() - 1);
    return new ScaleBar(label(shortest, unit), unit.convert(shortest, Unit.MILLIMETRE) * perMm);
  }

  private static String label(double length, Unit unit) {
    String number = length == 0.5 ? "1/2" : String.valueOf(Math.round(length));
    return number + " " + unit.symbol();
  }

  /** The shapes of it in a picture's lower left corner, on a patch of their own. */
  List<Shape> in(MmRect frame) {
    double x = frame.x() + INSET;
    double y = frame.bottom() - INSET;
    double words = label.length() * LETTER;
    return List.of(
        new Shape.Patch(new MmRect(x - 1.5, y - 2.6, length + words + 5, 4.4), Tone.PAPER),
        line(new MmPoint(x, y), new MmPoint(x + length, y)),
        line(new MmPoint(x, y - TICK), new MmPoint(x, y + TICK)),
        line(new MmPoint(x + length, y - TICK), new MmPoint(x + length, y + TICK)),
        new Shape.Words(label, new MmPoint(x + length + 1.6, y + 0.9), SIZE, Side.RIGHT_OF));
  }

  private static Shape line(MmPoint from, MmPoint to) {
    return new Shape.Line(from, to, 0.4, Tone.INK, Stroke.WHOLE);
  }
}
