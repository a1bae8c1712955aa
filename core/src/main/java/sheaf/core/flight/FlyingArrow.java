package sheaf.core.flight;

/**
 * An arrow as the air sees it.
 *
 * @param kilograms mass with its point, above zero
 * @param shaftMetres outside diameter of the shaft, above zero
 * @param dragCoefficient of the whole arrow, on the shaft's cross-section; zero or more
 */
public record FlyingArrow(double kilograms, double shaftMetres, double dragCoefficient) {

  /**
   * Between 1.5, measured in a wind tunnel with a laminar boundary layer, and 2.6 with a turbulent
   * one (T. Miyazaki and others, Aerodynamic properties of an archery arrow, Sports Engineering 16,
   * 2013; from memory). Vanes of hunting arrows rather add to it.
   */
  public static final double USUAL_DRAG = 2.2;

  /** Throws when a component is out of the range it is described with. */
  public FlyingArrow {
    if (!(kilograms > 0) || !(shaftMetres > 0) || !(dragCoefficient >= 0)) {
      throw new IllegalArgumentException(
          "an arrow needs mass, diameter and drag: %s, %s, %s"
              .formatted(kilograms, shaftMetres, dragCoefficient));
    }
  }

  /**
   * Deceleration over the square of the speed, 1/m: density times area times drag over 2 masses.
   */
  double perMetre(Air air) {
    double area = Math.PI / 4 * shaftMetres * shaftMetres;
    return air.kilogramsPerCubicMetre() * area * dragCoefficient / (2 * kilograms);
  }
}
