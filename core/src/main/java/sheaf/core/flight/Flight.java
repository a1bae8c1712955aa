package sheaf.core.flight;

import java.util.OptionalDouble;

/**
 * The flight of an arrow in still air: it falls, and drag slows it by the square of its speed along
 * its own way.
 *
 * <p>With k from the arrow and the air, v' = -k |v| v - g. The equations are solved with the
 * distance as the variable, which lands exactly on the target, by the classical fourth-order method
 * of C. Runge and W. Kutta; its steps are so short that halving them changes nothing above 1e-10.
 * Without air the method gives the parabola itself. Lift, spin and the bending of the shaft are
 * left out.
 */
public final class Flight {

  /** Standard acceleration of free fall, m/s² (3rd General Conference on Weights and Measures). */
  public static final double GRAVITY = 9.80665;

  private static final double STEP_METRES = 0.25;

  /** Beyond this the distance is no good variable, and no bow is aimed so. */
  private static final double STEEPEST_RADIANS = Math.toRadians(80);

  /** The flatter angle is sought up to here, a degree at a time. */
  private static final double HIGHEST_RADIANS = Math.toRadians(45);

  private static final double SEARCH_RADIANS = Math.toRadians(1);

  private final double perMetre;

  private Flight(double perMetre) {
    this.perMetre = perMetre;
  }

  /** How a certain arrow flies in a certain air. */
  public static Flight of(FlyingArrow arrow, Air air) {
    return new Flight(arrow.perMetre(air));
  }

  /**
   * Where an arrow is, and how fast.
   *
   * @param upMetres over the height that it left at
   * @param forward speed along the ground, m/s
   * @param upward speed upward, m/s; negative when it falls
   * @param seconds since it left
   */
  public record Place(double upMetres, double forward, double upward, double seconds) {

    /** Speed along its way, m/s. */
    public double speed() {
      return Math.hypot(forward, upward);
    }

    /** How steeply it flies, radians over the horizontal; negative when it falls. */
    public double angle() {
      return Math.atan2(upward, forward);
    }
  }

  /**
   * Where an arrow is at a distance.
   *
   * @param speed that it leaves with, m/s, above zero
   * @param angle that it leaves at, radians over the horizontal, less than 80° either way
   * @param metres along the ground, zero or more
   */
  public Place at(double speed, double angle, double metres) {
    if (!(speed > 0) || !(Math.abs(angle) < STEEPEST_RADIANS) || !(metres >= 0)) {
      throw new IllegalArgumentException(
          "a flight needs a speed, an angle below 80° and a distance: %s, %s, %s"
              .formatted(speed, angle, metres));
    }
    Place place = new Place(0, speed * Math.cos(angle), speed * Math.sin(angle), 0);
    int steps = (int) Math.ceil(metres / STEP_METRES);
    for (int i = 0; i < steps; i++) {
      place = step(place, metres / steps);
    }
    return place;
  }

  private Place step(Place from, double metres) {
    Place a = slope(from);
    Place b = slope(along(from, a, metres / 2));
    Place c = slope(along(from, b, metres / 2));
    Place d = slope(along(from, c, metres));
    double sixth = metres / 6;
    return new Place(
        from.upMetres + sixth * (a.upMetres + 2 * b.upMetres + 2 * c.upMetres + d.upMetres),
        from.forward + sixth * (a.forward + 2 * b.forward + 2 * c.forward + d.forward),
        from.upward + sixth * (a.upward + 2 * b.upward + 2 * c.upward + d.upward),
        from.seconds + sixth * (a.seconds + 2 * b.seconds + 2 * c.seconds + d.seconds));
  }

  /** How everything changes with each metre along the ground. */
  private Place slope(Place at) {
    double slowing = perMetre * at.speed();
    return new Place(
        at.upward / at.forward,
        -slowing,
        -(slowing * at.upward + GRAVITY) / at.forward,
        1 / at.forward);
  }

  private static Place along(Place from, Place slope, double metres) {
    return new Place(
        from.upMetres + metres * slope.upMetres,
        from.forward + metres * slope.forward,
        from.upward + metres * slope.upward,
        from.seconds + metres * slope.seconds);
  }

  /**
   * The flatter of the two angles at which an arrow reaches a place, radians over the horizontal;
   * empty when it does not reach so far.
   *
   * @param speed that it leaves with, m/s
   * @param metres along the ground, above zero
   * @param upMetres over the height that it leaves at; negative below
   */
  public OptionalDouble angleTo(double speed, double metres, double upMetres) {
    double low = Math.max(Math.atan2(upMetres, metres), 0.01 - STEEPEST_RADIANS);
    for (double high = low; high <= HIGHEST_RADIANS; high += SEARCH_RADIANS) {
      if (at(speed, high, metres).upMetres >= upMetres) {
        return OptionalDouble.of(bisect(speed, metres, upMetres, low, high));
      }
    }
    return OptionalDouble.empty();
  }

  private double bisect(double speed, double metres, double upMetres, double low, double high) {
    double below = low;
    double above = high;
    for (int i = 0; i < Double.SIZE && below < above; i++) {
      double middle = (below + above) / 2;
      if (at(speed, middle, metres).upMetres < upMetres) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }
}
