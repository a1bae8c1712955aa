package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Pen;

/**
 * A bar that tells a picture's scale.
 *
 * @param label its true length with the unit
 * @param length on the card, in millimetres
 */
record ScaleBar(String label, double length) {

  private static final double INSET = 3;
  private static final double TICK = 1.2;
  private static final double SIZE = 7.5;

  /** The bar fills at most this share of the picture's width. */
  private static final double WIDEST = 0.4;

  /** The longest round length that fits. */
  static ScaleBar fit(UnitSystem units, double perMm, double width) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.INCH : Unit.MILLIMETRE;
    List<Double> lengths =
        inches ? List.of(8.0, 4.0, 2.0, 1.0, 0.5) : List.of(200.0, 100.0, 50.0, 20.0, 10.0);
    for (double length : lengths) {
      double onCard = unit.convert(length, Unit.MILLIMETRE) * perMm;
      if (onCard <= WIDEST * width) {
        return new ScaleBar(label(length, unit), onCard);
      }
    }
    double shortest = lengths.get(lengths.size() - 1);
    return new ScaleBar(label(shortest, unit), unit.convert(shortest, Unit.MILLIMETRE) * perMm);
  }

  private static String label(double length, Unit unit) {
    String number = length == 0.5 ? "1/2" : String.valueOf(Math.round(length));
    return number + " " + unit.symbol();
  }

  /** Draws it into a picture's lower left corner, on white of its own. */
  void draw(MmRect frame, Pen pen) throws IOException {
    double x = frame.x() + INSET;
    double y = frame.bottom() - INSET;
    double words = pen.widthOf(label, Weight.REGULAR, SIZE);
    pen.colour(Color.WHITE);
    pen.fill(List.of(new MmRect(x - 1.5, y - 2.6, length + words + 5, 4.4)));
    pen.colour(Color.BLACK);
    pen.width(0.4);
    pen.line(new MmPoint(x, y), new MmPoint(x + length, y));
    pen.line(new MmPoint(x, y - TICK), new MmPoint(x, y + TICK));
    pen.line(new MmPoint(x + length, y - TICK), new MmPoint(x + length, y + TICK));
    pen.text(label, x + length + 1.6, y + 0.9, Weight.REGULAR, SIZE);
  }
}
