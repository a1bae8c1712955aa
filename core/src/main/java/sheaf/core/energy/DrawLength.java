package sheaf.core.energy;

import sheaf.core.measure.Unit;

/**
 * Draw length by the ATA: from the nocking point to the pivot of the grip at full draw, plus 1 3/4
 * in (AMO Standards FP-3, 2000: 26 1/4 and 28 in; ASTM F1880-09, 3.2.2).
 */
public final class DrawLength {

  private static final double ADDED_MM = Unit.INCH.convert(1.75, Unit.MILLIMETRE);

  private DrawLength() {}

  /** From nocking point to grip pivot, in millimetres, of an ATA draw length in millimetres. */
  public static double toPivotMm(double ataMm) {
    return ataMm - ADDED_MM;
  }

  /**
   * How far the string pushes the arrow: to the pivot at full draw, less the brace height; all in
   * millimetres.
   */
  public static double powerStrokeMm(double ataMm, double braceMm) {
    return toPivotMm(ataMm) - braceMm;
  }
}
