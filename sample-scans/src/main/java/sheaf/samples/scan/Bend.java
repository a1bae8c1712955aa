package sheaf.samples.scan;

import java.util.function.DoubleUnaryOperator;

/**
 * Paper bent about one axis, as paper bends without stretching: a cylinder, not always a round one.
 *
 * <p>Places are measured along the paper from the sheet's middle, across the bend's axis.
 */
public final class Bend {

  /** Half the length of paper that is bent; beyond it goes straight on. Longer than any sheet. */
  private static final double REACH = 320;

  private static final double STEP = 0.25;
  private static final int STEPS = (int) (2 * REACH / STEP);

  private final double cos;
  private final double sin;
  private final double[] shift = new double[STEPS + 1];
  private final double[] height = new double[STEPS + 1];

  /**
   * A bend.
   *
   * @param direction in which the paper rises and falls, in degrees clockwise from the sheet's
   *     right
   * @param rise angle between paper and board at a place, in radians
   */
  private Bend(double direction, DoubleUnaryOperator rise) {
    cos = Math.cos(Math.toRadians(direction));
    sin = Math.sin(Math.toRadians(direction));
    for (int i = 1; i <= STEPS; i++) {
      double angle = rise.applyAsDouble((i - 0.5) * STEP - REACH);
      shift[i] = shift[i - 1] + STEP * (Math.cos(angle) - 1);
      height[i] = height[i - 1] + STEP * Math.sin(angle);
    }
    double middleShift = shift[STEPS / 2];
    double middleHeight = height[STEPS / 2];
    for (int i = 0; i <= STEPS; i++) {
      shift[i] -= middleShift;
      height[i] -= middleHeight;
    }
  }

  /**
   * Held at two edges, standing off the board between them.
   *
   * @param length of the paper between the edges, in millimetres
   * @param rise in the middle, in millimetres
   */
  public static Bend arch(double direction, double length, double rise) {
    double steepest = Math.PI * rise / length;
    return new Bend(
        direction,
        p -> Math.abs(p) > length / 2 ? 0 : -steepest * Math.sin(2 * Math.PI * p / length));
  }

  /**
   * Curled as from a roll: lying on the board at one place and rising to both sides, ever steeper.
   *
   * @param from where it lies on the board, in millimetres from the sheet's middle
   * @param lift at {@code half} millimetres from there
   */
  public static Bend curl(double direction, double from, double half, double lift) {
    double curvature = 2 * lift / (half * half);
    return new Bend(direction, p -> curvature * Math.max(-half, Math.min(half, p - from)));
  }

  /**
   * One edge or corner lifted, the rest flat.
   *
   * @param from where it begins to rise, in millimetres from the sheet's middle
   * @param end of the sheet in that direction, in millimetres from its middle
   * @param lift at the end, in millimetres
   */
  public static Bend lifted(double direction, double from, double end, double lift) {
    double length = end - from;
    double steepening = 3 * lift / (length * length * length);
    return new Bend(
        direction,
        p -> {
          double in = Math.max(0, Math.min(length, p - from));
          return steepening * in * in;
        });
  }

  /**
   * Waves, as damp paper has.
   *
   * @param length of a wave in millimetres
   * @param height from its middle to its crest, in millimetres
   * @param phase in radians
   */
  public static Bend waves(double direction, double length, double height, double phase) {
    double steepest = 2 * Math.PI * height / length;
    return new Bend(direction, p -> steepest * Math.cos(2 * Math.PI * p / length + phase));
  }

  /** Moves a place on the flat sheet to where the bend puts it: across, down, off the board. */
  void move(double x, double y, double[] place) {
    double at = (x * cos + y * sin + REACH) / STEP;
    double within = Math.max(0, Math.min(STEPS, at));
    int before = Math.min(STEPS - 1, (int) within);
    // Beyond the table the paper goes straight on.
    double share = at - before;
    double moved = shift[before] + share * (shift[before + 1] - shift[before]);
    place[0] += moved * cos;
    place[1] += moved * sin;
    place[2] += height[before] + share * (height[before + 1] - height[before]);
  }
}
