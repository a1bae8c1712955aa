package sheaf.scanner.sheet;

/**
 * A place in a picture, in pixels; whole numbers are pixel centres.
 *
 * @param x to the right
 * @param y down
 */
public record Pixel(double x, double y) {}
