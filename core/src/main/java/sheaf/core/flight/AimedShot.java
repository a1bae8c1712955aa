package sheaf.core.flight;

/**
 * A bow aimed through a peep or with the eye, over the arrow.
 *
 * <p>The line of sight begins at the eye and leads over the pin to the target. Set for a distance,
 * the sight tilts the bow so that the arrow comes up to that line and meets it there; nearer, the
 * arrow may fly over it or under it. On level ground; uphill and downhill the same set-up shoots
 * high.
 *
 * @param flight of the arrow
 * @param speed that it leaves with, m/s, above zero
 * @param eyeMetres how far the eye is over the arrow at full draw, zero or more
 */
public record AimedShot(Flight flight, double speed, double eyeMetres) {

  /** Whether the arrow comes so far at all. */
  public boolean reaches(double metres) {
    return flight.angleTo(speed, metres, eyeMetres).isPresent();
  }

  /**
   * The angle between the arrow and the line of sight with the sight set for a distance, radians.
   *
   * @throws IllegalArgumentException when the arrow does not reach so far
   */
  public double angleFor(double metres) {
    return flight
        .angleTo(speed, metres, eyeMetres)
        .orElseThrow(
            () -> new IllegalArgumentException("the arrow does not reach " + metres + " m"));
  }

  /**
   * How high over the aim an arrow hits at one distance with the sight set for another: the peep
   * helper. A hit that differs from this, with the same arrow, says that the peep or the sight is
   * not where it was.
   *
   * @param setMetres what the sight is set for
   * @param atMetres how far the target is
   * @return metres, negative when it hits low
   * @throws IllegalArgumentException when the arrow does not reach what the sight is set for
   */
  public double heightAt(double setMetres, double atMetres) {
    return flight.at(speed, angleFor(setMetres), atMetres).upMetres() - eyeMetres;
  }

  /**
   * How far an arrow falls below the line that it left on.
   *
   * @param metres along the ground
   */
  public double dropAt(double metres) {
    return -flight.at(speed, 0, metres).upMetres();
  }
}
