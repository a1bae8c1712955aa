package sheaf.samples.ends;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.scene.TearShot;
import sheaf.scanner.tear.EndNet;
import sheaf.scanner.tear.TearPicture;

/**
 * A square cut out of a sheet, turned and mirrored at random, with what the net should say of it.
 *
 * @param picture planes of tones, paper 0
 * @param wanted planes as {@link #PLANES} says, one value for each of the net's cells
 */
record Lesson(float[] picture, float[] wanted) {

  /** Side of a square in the net's cells. */
  static final int CELLS = 32;

  /** Side in pixels. */
  static final int SIDE = CELLS * EndNet.CELL_MM * TearPicture.PER_MM;

  /**
   * For the tail and then for the point: whether it lies in the cell, what a wrong guess costs
   * here, whether the cell is near enough to say where it is, and where it is; then the way to the
   * other end from tail and point, whether the arrow left a bullet hole, and whether it has four
   * vanes.
   */
  static final int PLANES = 16;

  /** Wrong guesses near an end cost less: standard deviation in millimetres. */
  private static final double NEAR = 1.6;

  /** Cells whose middle is so near tell where an end is, in millimetres. */
  private static final double TELLS = 2.3;

  /** A square's middle lies within this of an end, in millimetres. */
  private static final double AROUND = 24;

  /** Scanners differ in brightness by this share: a standard deviation. */
  private static final double UNEVEN = 0.02;

  private record Torn(double pointX, double pointY, double tailX, double tailY, int vanes) {
    boolean isBulletHole() {
      return pointX == tailX && pointY == tailY;
    }
  }

  /**
   * Where a square is cut out and how it is turned.
   *
   * @param left of its first pixel in the sheet's picture
   * @param top the same, down
   * @param turn mirrored across, mirrored down, across and down exchanged: a bit for each
   */
  private record Cut(TearPicture whole, int left, int top, int turn) {}

  /** Cuts a square near one of a sheet's tears, or one in five anywhere. */
  static Lesson draw(LearnedSheet sheet, RandomGenerator random) {
    TearPicture whole = sheet.picture();
    double x = random.nextDouble() * whole.columns();
    double y = random.nextDouble() * whole.rows();
    List<TearShot> tears = sheet.tears();
    if (!tears.isEmpty() && random.nextInt(5) > 0) {
      TearShot near = tears.get(random.nextInt(tears.size()));
      MmPoint end = random.nextBoolean() ? near.point() : near.tail();
      x = (end.x() - whole.left() + AROUND * random.nextDouble(-1, 1)) * TearPicture.PER_MM;
      y = (end.y() - whole.top() + AROUND * random.nextDouble(-1, 1)) * TearPicture.PER_MM;
    }
    int left = (int) Math.round(x - SIDE / 2.0);
    int top = (int) Math.round(y - SIDE / 2.0);
    Cut cut = new Cut(whole, left, top, random.nextInt(8));
    boolean grey = random.nextInt(4) == 0;
    List<Torn> torn = tears.stream().map(tear -> torn(tear, cut)).toList();
    return new Lesson(picture(cut, grey, random), wanted(torn));
  }

  private static Torn torn(TearShot tear, Cut cut) {
    double[] point = inside(tear.point(), cut);
    double[] tail = inside(tear.tail(), cut);
    return new Torn(point[0], point[1], tail[0], tail[1], tear.vanes());
  }

  /** A place in millimetres from the square's corner, after turning. */
  private static double[] inside(MmPoint at, Cut cut) {
    double side = SIDE / (double) TearPicture.PER_MM;
    double x = at.x() - cut.whole.left() - cut.left / (double) TearPicture.PER_MM;
    double y = at.y() - cut.whole.top() - cut.top / (double) TearPicture.PER_MM;
    double across = (cut.turn & 1) == 0 ? x : side - x;
    double down = (cut.turn & 2) == 0 ? y : side - y;
    return (cut.turn & 4) == 0 ? new double[] {across, down} : new double[] {down, across};
  }

  private static float[] picture(Cut cut, boolean grey, RandomGenerator random) {
    float[] picture = new float[TearPicture.PLANES * SIDE * SIDE];
    float gain = (float) (1 + UNEVEN * random.nextGaussian());
    for (int i = 0; i < SIDE * SIDE; i++) {
      int column = i % SIDE;
      int row = i / SIDE;
      int across = (cut.turn & 4) == 0 ? column : row;
      int down = (cut.turn & 4) == 0 ? row : column;
      int x = cut.left + ((cut.turn & 1) == 0 ? across : SIDE - 1 - across);
      int y = cut.top + ((cut.turn & 2) == 0 ? down : SIDE - 1 - down);
      fill(picture, i, cut.whole, x, y, gain, grey);
    }
    return picture;
  }

  /** Fills a pixel of all planes; beyond the sheet's picture it stays paper. */
  private static void fill(
      float[] picture, int pixel, TearPicture whole, int x, int y, float gain, boolean grey) {
    if (x < 0 || y < 0 || x >= whole.columns() || y >= whole.rows()) {
      return;
    }
    float mean = 0;
    for (int plane = 0; plane < TearPicture.PLANES; plane++) {
      int tone = whole.tones()[(plane * whole.rows() + y) * whole.columns() + x] & 0xFF;
      float value = gain * tone / TearPicture.PAPER - 1;
      picture[plane * SIDE * SIDE + pixel] = value;
      mean += value / TearPicture.PLANES;
    }
    for (int plane = 0; grey && plane < TearPicture.PLANES; plane++) {
      picture[plane * SIDE * SIDE + pixel] = mean;
    }
  }

  private static float[] wanted(List<Torn> torn) {
    float[] wanted = new float[PLANES * CELLS * CELLS];
    int plane = CELLS * CELLS;
    Arrays.fill(wanted, plane, 2 * plane, 1);
    Arrays.fill(wanted, 6 * plane, 7 * plane, 1);
    for (Torn tear : torn) {
      for (int cell = 0; cell < plane; cell++) {
        add(tear, wanted, cell);
      }
    }
    return wanted;
  }

  private static void add(Torn tear, float[] wanted, int cell) {
    int plane = CELLS * CELLS;
    double x = (cell % CELLS + 0.5) * EndNet.CELL_MM;
    double y = (cell / CELLS + 0.5) * EndNet.CELL_MM;
    end(wanted, 0, cell, tear.tailX - x, tear.tailY - y);
    end(wanted, 5, cell, tear.pointX - x, tear.pointY - y);
    if (Math.hypot(tear.tailX - x, tear.tailY - y) < TELLS) {
      wanted[10 * plane + cell] = (float) (tear.pointX - x);
      wanted[11 * plane + cell] = (float) (tear.pointY - y);
      wanted[14 * plane + cell] = tear.isBulletHole() ? 1 : 0;
      wanted[15 * plane + cell] = tear.vanes == 4 ? 1 : 0;
    }
    if (Math.hypot(tear.pointX - x, tear.pointY - y) < TELLS) {
      wanted[12 * plane + cell] = (float) (tear.tailX - x);
      wanted[13 * plane + cell] = (float) (tear.tailY - y);
    }
  }

  private static void end(float[] wanted, int first, int cell, double right, double down) {
    int plane = CELLS * CELLS;
    double half = EndNet.CELL_MM / 2.0;
    boolean in = right >= -half && right < half && down >= -half && down < half;
    double away = Math.hypot(right, down);
    double near = Math.exp(-away * away / (2 * NEAR * NEAR));
    wanted[first * plane + cell] = Math.max(wanted[first * plane + cell], in ? 1 : 0);
    double costs = Math.pow(1 - near, 4);
    wanted[(first + 1) * plane + cell] =
        (float) Math.min(wanted[(first + 1) * plane + cell], costs);
    if (away < TELLS) {
      wanted[(first + 2) * plane + cell] = 1;
      wanted[(first + 3) * plane + cell] = (float) right;
      wanted[(first + 4) * plane + cell] = (float) down;
    }
  }
}
