package sheaf.samples.tear;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;

/**
 * What a shaft that goes through paper sideways leaves between its two ends: a ragged furrow as
 * wide as the shaft, whose sides hang behind it and close it again more or less.
 *
 * @param angle of the way from the point to the tail, in radians
 * @param length of that way in true millimetres
 * @param radius of the shaft
 * @param middle how far the furrow's middle lies off the straight way, to the right of one who
 *     walks it, at even steps; zero at both ends
 * @param sides the left and the right one
 */
record Furrow(double angle, double length, double radius, double[] middle, List<Side> sides) {

  /** Torn fibres are not resolved below this, in millimetres. */
  static final double STEP = 0.25;

  /** Share of the furrow's length by which it may wander aside. */
  private static final double CROOKED = 0.018;

  /** A piece of a side between two tears that run outward, in millimetres. */
  private static final double SHORTEST_PIECE = 2.5;

  private static final double LONGEST_PIECE = 11;

  /** How unevenly paper folds along the shaft, in shares of its radius. */
  private static final double FOLD_NOISE = 0.06;

  /** How ragged its torn edge is, in millimetres. */
  private static final double RAG = 0.16;

  /**
   * One side.
   *
   * @param fold distance of the fold from the middle, in millimetres, at even steps
   * @param edge distance of the torn edge from the middle, in millimetres, at the same steps; below
   *     zero where it hangs over the middle
   * @param pieces between tears that run outward, in order
   */
  record Side(double[] fold, double[] edge, List<Piece> pieces) {}

  /**
   * A piece of a side.
   *
   * @param from its first step
   * @param to its last step
   * @param slope how steeply it hangs, 0 to 1
   * @param dragged how far it lies on the paper's front, in millimetres; 0 when it hangs behind
   * @param split how far the tear at its beginning runs outward, in millimetres
   * @param lean of that tear along the furrow, in millimetres
   */
  record Piece(int from, int to, double slope, double dragged, double split, double lean) {}

  /** Draws one at random. */
  static Furrow draw(double angle, double length, double radius, RandomGenerator random) {
    int steps = Math.max(2, (int) Math.ceil(length / STEP));
    double usual =
        random.nextDouble() < 0.75 ? random.nextDouble(0, 0.7) : random.nextDouble(0.7, 0.93);
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      sides.add(side(steps, usual, radius, random));
    }
    double[] middle = wander(steps, CROOKED * length * random.nextDouble(), random);
    return new Furrow(angle, length, radius, middle, sides);
  }

  private static Side side(int steps, double usual, double radius, RandomGenerator random) {
    List<Piece> pieces = pieces(steps, radius, random);
    double[] slow = noise(steps, 0.17, 0.96, random);
    double[] fine = noise(steps, RAG, 0.55, random);
    double[] folds = noise(steps, FOLD_NOISE, 0.9, random);
    double[] fold = new double[steps + 1];
    double[] edge = new double[steps + 1];
    for (Piece piece : pieces) {
      double own = usual + random.nextGaussian() * 0.15;
      double closing = piece.dragged() > 0 ? 0 : Math.max(0, Math.min(0.95, own));
      for (int i = piece.from(); i <= piece.to(); i++) {
        fold[i] = radius * (1 + folds[i]);
        double closed = Math.max(0, Math.min(0.97, closing + slow[i]));
        edge[i] = fold[i] * (1 - closed) + fine[i];
      }
    }
    return new Side(fold, edge, pieces);
  }

  private static List<Piece> pieces(int steps, double radius, RandomGenerator random) {
    List<Piece> pieces = new ArrayList<>();
    int from = 0;
    while (from < steps) {
      double length = random.nextDouble(SHORTEST_PIECE, LONGEST_PIECE);
      int to = Math.min(steps, from + (int) Math.round(length / STEP));
      boolean dragged = random.nextInt(9) == 0;
      pieces.add(
          new Piece(
              from,
              to,
              random.nextDouble(),
              dragged ? radius * random.nextDouble(0.25, 0.7) : 0,
              from == 0 ? 0 : random.nextDouble() * random.nextDouble(0.3, 2.2),
              random.nextGaussian() * 0.8));
      from = to;
    }
    return pieces;
  }

  /** Uneven steps, each somewhat like the one before. */
  private static double[] noise(
      int steps, double deviation, double likeness, RandomGenerator random) {
    double[] noise = new double[steps + 1];
    double fresh = deviation * Math.sqrt(1 - likeness * likeness);
    noise[0] = random.nextGaussian() * deviation * 0.5;
    for (int i = 1; i < noise.length; i++) {
      noise[i] = likeness * noise[i - 1] + random.nextGaussian() * fresh;
    }
    return noise;
  }

  /** A gentle bow with a wave on it, zero at both ends. */
  private static double[] wander(int steps, double most, RandomGenerator random) {
    double bow = random.nextDouble(-1, 1);
    double wave = random.nextDouble(-0.5, 0.5);
    double[] wander = new double[steps + 1];
    for (int i = 0; i < wander.length; i++) {
      double t = Math.PI * i / steps;
      wander[i] = most * (bow * Math.sin(t) + wave * Math.sin(2 * t));
    }
    return wander;
  }

  int steps() {
    return middle.length - 1;
  }

  /** The place so many steps along and so far to the right of one who walks it. */
  MmPoint place(double step, double right) {
    double along = length * step / steps();
    return new MmPoint(
        along * Math.cos(angle) - right * Math.sin(angle),
        along * Math.sin(angle) + right * Math.cos(angle));
  }

  /** How far from the straight way a side's fold or edge lies: the left one is to the left. */
  double aside(int side, double[] distance, int step) {
    return middle[step] + (side == 0 ? -distance[step] : distance[step]);
  }

  /** The open part between both torn edges, in order. */
  List<MmPoint> opening() {
    List<MmPoint> outline = new ArrayList<>();
    for (int i = 0; i <= steps(); i++) {
      outline.add(place(i, aside(0, sides.get(0).edge(), i)));
    }
    for (int i = steps(); i >= 0; i--) {
      outline.add(place(i, aside(1, sides.get(1).edge(), i)));
    }
    return outline;
  }
}
