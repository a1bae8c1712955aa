package sheaf.samples.hole;

import sheaf.core.page.MmPoint;

/**
 * A split that runs outward from a hole: a tear, or the slit of a blade.
 *
 * @param angle in radians
 * @param from where it begins, in millimetres from the axis
 * @param to where it ends, in millimetres from the axis
 * @param wander of its middle to the side, in millimetres, at even steps
 * @param half of its width, in millimetres, at the same steps
 * @param closed how much of its width the paper covers again, 0 to 1
 * @param lip by how much one side stands above the other, in millimetres
 */
public record Cut(
    double angle,
    double from,
    double to,
    double[] wander,
    double[] half,
    double closed,
    double lip) {

  /** Steps along a cut. */
  static final int STEPS = 16;

  /** A place on it: so far along, 0 to 1, and so far to the side of its middle. */
  MmPoint place(double t, double aside) {
    double side = aside + at(wander, t);
    double distance = from + t * (to - from);
    return new MmPoint(
        distance * Math.cos(angle) - side * Math.sin(angle),
        distance * Math.sin(angle) + side * Math.cos(angle));
  }

  /** Half its width at a place along it. */
  double half(double t) {
    return at(half, t);
  }

  static double at(double[] steps, double t) {
    int before = Math.max(0, Math.min(steps.length - 2, (int) (t * (steps.length - 1))));
    double within = t * (steps.length - 1) - before;
    return steps[before] * (1 - within) + steps[before + 1] * within;
  }
}
