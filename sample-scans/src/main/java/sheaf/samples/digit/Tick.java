package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmRect;

/** How people tick a box, and take a tick back. */
enum Tick {
  /** Two lines. */
  CROSS,
  /** A check mark, now and then far out of the box. */
  CHECK,
  /** One line. */
  SLASH,
  /** The pen to and fro within the box. */
  FILLED,
  /** Ticked, then scribbled over beyond the box's lines: taken back. */
  WITHDRAWN;

  /** Some way to tick. */
  static Tick draw(RandomGenerator random) {
    double kind = random.nextDouble();
    return kind < 0.4 ? CROSS : kind < 0.75 ? CHECK : kind < 0.85 ? SLASH : FILLED;
  }

  /** This in a box. */
  Hand in(MmRect box, double penMm, RandomGenerator random) {
    double pen = penMm * (Marks.SIDE - 2.0 * Marks.ROOM) / box.width();
    MmRect moved =
        new MmRect(
            box.x() + random.nextGaussian() * 0.35,
            box.y() + random.nextGaussian() * 0.35,
            box.width(),
            box.height());
    return Hand.over(moved, Marks.strokes(lines(random), pen, random));
  }

  private List<List<double[]>> lines(RandomGenerator random) {
    double out = random.nextDouble(-0.15, 0.18);
    return switch (this) {
      case CROSS ->
          List.of(
              List.of(new double[] {-out, -out}, new double[] {1 + out, 1 + out}),
              List.of(new double[] {1 + out, -out}, new double[] {-out, 1 + out}));
      case CHECK ->
          List.of(
              List.of(
                  new double[] {0.15, 0.5},
                  new double[] {0.4, 0.85},
                  new double[] {1.03 + out, 0.03 - out}));
      case SLASH ->
          List.of(List.of(new double[] {0.9, 0.05 - out}, new double[] {0.1, 0.95 + out}));
      case FILLED -> List.of(zigzag(0.12, 0.85, random));
      case WITHDRAWN ->
          List.of(
              List.of(new double[] {0, 0}, new double[] {1, 1}),
              zigzag(-0.15, 1.15, random),
              zigzag(-0.12, 1.12, random));
    };
  }

  private static List<double[]> zigzag(double from, double to, RandomGenerator random) {
    int turns = random.nextInt(11, 16);
    List<double[]> places = new ArrayList<>();
    for (int i = 0; i < turns; i++) {
      double side = i % 2 == 0 ? from : to;
      double down = from + (to - from) * i / (turns - 1.0);
      places.add(new double[] {side + random.nextGaussian() * 0.04, down});
    }
    return places;
  }
}
