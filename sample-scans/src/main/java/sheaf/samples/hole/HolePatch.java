package sheaf.samples.hole;

/**
 * A hole painted onto a small square of pixels.
 *
 * @param side pixels along an edge
 * @param open how much of what lies behind is seen through each pixel, 0 to 1
 * @param shade what the paper's tone is multiplied by
 * @param shadow what the tone of what lies behind is multiplied by
 */
public record HolePatch(int side, float[] open, float[] shade, float[] shadow) {}
