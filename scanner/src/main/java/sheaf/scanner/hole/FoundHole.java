package sheaf.scanner.hole;

/**
 * A hole before it is judged.
 *
 * @param circle of the shaft
 * @param shape what it says of the head
 */
record FoundHole(Circle circle, HeadShape shape) {}
