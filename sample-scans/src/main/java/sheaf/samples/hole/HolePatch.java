package sheaf.samples.hole;

/**
 * A hole painted onto a small rectangle of pixels.
 *
 * @param left column of its first pixel, counted from the pixel that the axis goes through
 * @param top row of its first pixel, counted the same
 * @param width pixels across
 * @param height pixels down
 * @param open how much of what lies behind is seen through each pixel, 0 to 1
 * @param shade what the paper's tone is multiplied by
 * @param behind what the tone of what lies behind is multiplied by
 * @param bare how much of the print is hidden by torn fibre or by the paper's back, 0 to 1
 */
public record HolePatch(
    int left,
    int top,
    int width,
    int height,
    float[] open,
    float[] shade,
    float[] behind,
    float[] bare) {}
