package sheaf.core.tune;

import sheaf.core.page.MmVector;

/**
 * What one step of a lever does to the offset of broadheads from field points at 20 yd.
 *
 * @param perStep in millimetres, x right, y down, for a step to the right or up
 * @param rightDeviation standard deviation of what is known of its x, in millimetres; above zero
 * @param downDeviation the same of its y
 */
public record Response(MmVector perStep, double rightDeviation, double downDeviation) {

  /** Beyond so many standard deviations a direction is taken to be known: about 19 in 20. */
  private static final double KNOWN = 2;

  /** Along its own axis a lever moves impact about so many times as much as across it. */
  private static final double ALONG_OVER_ACROSS = 2.5;

  /** What is assumed before a lever was ever moved: anything, about as much as is usual. */
  static Response unknown(Lever lever) {
    double along = lever.step().usualMm();
    double across = along / ALONG_OVER_ACROSS;
    boolean sideways = lever.axis() == Axis.SIDEWAYS;
    return new Response(new MmVector(0, 0), sideways ? along : across, sideways ? across : along);
  }

  /** Whether it is known which way the lever moves impact along its own axis. */
  public boolean directionKnown(Axis axis) {
    return Math.abs(axis.along(perStep)) > KNOWN * deviation(axis);
  }

  /** The most that a step may well move impact along an axis, in millimetres. */
  double mostAlong(Axis axis) {
    return Math.abs(axis.along(perStep)) + KNOWN * deviation(axis);
  }

  /** Standard deviation of what is known along an axis, in millimetres. */
  double deviation(Axis axis) {
    return axis == Axis.SIDEWAYS ? rightDeviation : downDeviation;
  }
}
