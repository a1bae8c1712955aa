package sheaf.scanner.tear;

/**
 * What a shaft sweeps that goes through paper sideways: all that lies within its radius of the way
 * from the point to the tail. In millimetres on the page as designed.
 *
 * @param pointX where the point went in
 * @param pointY the same, down
 * @param tailX where the tail passed
 * @param tailY the same, down
 * @param radius of the shaft
 */
record Capsule(double pointX, double pointY, double tailX, double tailY, double radius) {

  /** Length of the way. */
  double length() {
    return Math.hypot(tailX - pointX, tailY - pointY);
  }

  /** The same the other way round. */
  Capsule turned() {
    return new Capsule(tailX, tailY, pointX, pointY, radius);
  }

  /** The same with another shaft. */
  Capsule with(double other) {
    return new Capsule(pointX, pointY, tailX, tailY, other);
  }

  /** Moved at both ends. */
  Capsule moved(double pointRight, double pointDown, double tailRight, double tailDown) {
    return new Capsule(
        pointX + pointRight, pointY + pointDown, tailX + tailRight, tailY + tailDown, radius);
  }

  /** How far a place lies from the way. */
  double distance(double x, double y) {
    double length = length();
    if (length == 0) {
      return Math.hypot(x - pointX, y - pointY);
    }
    double ux = (tailX - pointX) / length;
    double uy = (tailY - pointY) / length;
    double along = (x - pointX) * ux + (y - pointY) * uy;
    double beyond = along - Math.max(0, Math.min(length, along));
    return Math.hypot(beyond, (y - pointY) * ux - (x - pointX) * uy);
  }
}
