package sheaf.scanner.hole;

import java.util.Optional;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A line that runs outward from a hole.
 *
 * @param angle of its end as seen from the axis, in radians
 * @param length from the axis to its end, in pixels
 * @param strength share of its way on which it was seen, 0 to 1
 * @param heading the line on which it runs; empty when too little of it was seen
 */
public record Slit(double angle, double length, double strength, Optional<Heading> heading) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** A line that keeps within this of a neighbour's slit is that slit, in pixels. */
  private static final double BESIDE = 1.6 * MM;

  /** The neighbour's slit may run on unseen, in pixels. */
  private static final double BEYOND = 3 * MM;

  /** Share of a line that must lie along the neighbour's slit. */
  private static final double ALONG = 0.65;

  /** Places on a line that are looked at. */
  private static final int PLACES = 11;

  /** A straight one, of which no more is known. */
  public Slit(double angle, double length, double strength) {
    this(angle, length, strength, Optional.empty());
  }

  /** The same slit, on a line. */
  Slit on(Optional<Heading> line) {
    return new Slit(angle, length, strength, line);
  }

  /** The same slit as seen from another axis. */
  Slit seenFrom(Circle axis, Circle before) {
    double x = before.x() + length * Math.cos(angle) - axis.x();
    double y = before.y() + length * Math.sin(angle) - axis.y();
    return new Slit(Math.atan2(y, x), Math.hypot(x, y), strength, heading);
  }

  /** The angle between two slits, 0 to pi. */
  public double angleTo(Slit other) {
    double difference = Math.abs(angle - other.angle) % (2 * Math.PI);
    return Math.min(difference, 2 * Math.PI - difference);
  }

  /**
   * Whether most of another hole's line lies along this slit, or in its hole.
   *
   * @param own hole, from which this slit runs
   * @param line of the other hole
   */
  boolean covers(Circle own, Slit line, Circle other) {
    int near = 0;
    double from = other.radius();
    for (int i = 0; i < PLACES; i++) {
      double out = from + (line.length - from) * i / (PLACES - 1);
      double dx = other.x() + out * Math.cos(line.angle) - own.x();
      double dy = other.y() + out * Math.sin(line.angle) - own.y();
      double on = dx * Math.cos(angle) + dy * Math.sin(angle);
      double aside = Math.abs(dy * Math.cos(angle) - dx * Math.sin(angle));
      boolean within = Math.hypot(dx, dy) < own.radius() + BESIDE / 2;
      if (within || on > 0 && on < length + BEYOND && aside < BESIDE) {
        near++;
      }
    }
    return near >= ALONG * PLACES;
  }
}
