package sheaf.samples.hole;

/**
 * A piece of paper between two tears, folded along the shaft's circle.
 *
 * @param from angle of the tear before it, in radians
 * @param to angle of the tear after it, greater than {@code from}
 * @param closing how far it closes its part of the hole again, 0 to 1
 * @param tip where between the tears it reaches farthest in, 0 to 1
 * @param bluntness 1 for a pointed flap, more for a rounded one
 * @param fold unevenness of its fold as shares of the radius, at even steps
 * @param rag unevenness of its torn edge, the same
 * @param dragged how far it lies on the paper's front, as a share of the radius; 0 when it hangs
 *     behind
 * @param slope how steeply it hangs, 0 to 1
 */
public record Flap(
    double from,
    double to,
    double closing,
    double tip,
    double bluntness,
    double[] fold,
    double[] rag,
    double dragged,
    double slope) {

  /** Steps along a flap's edge; at 0.15 mm or less, torn fibres are not resolved any more. */
  static final int STEPS = 24;

  double angle(double t) {
    return from + t * (to - from);
  }

  /** Distance of the fold from the axis, as a share of the shaft's radius. */
  double fold(int step) {
    return 1 + fold[step];
  }

  /** Distance of the torn edge from the axis, as a share of the shaft's radius. */
  double edge(int step) {
    double t = step / (double) STEPS;
    double outer = t < tip ? 1 - t / tip : 1 - (1 - t) / (1 - tip);
    double rise = 1 - Math.pow(outer, bluntness);
    double torn = rag[step] * Math.min(1, 0.25 + 3 * closing);
    return fold(step) * (1 - closing * rise) + torn;
  }
}
