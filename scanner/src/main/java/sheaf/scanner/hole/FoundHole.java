package sheaf.scanner.hole;

/**
 * A hole before it is judged.
 *
 * @param circle of the shaft
 * @param spread standard deviation of the axis in each direction, in pixels
 * @param evidence how likely it is a hole, 0 to 1
 * @param shape what it says of the head
 */
record FoundHole(Circle circle, double spread, double evidence, HeadShape shape) {}
