package sheaf.scanner.hole;

/**
 * A hole before it is judged.
 *
 * @param circle of the shaft
 * @param evidence how much speaks for it being a hole, 0 to 1
 * @param shape what it says of the head
 */
record FoundHole(Circle circle, double evidence, HeadShape shape) {}
