package sheaf.scanner.sheet;

import java.util.Arrays;
import org.opencv.core.Point;
import org.opencv.core.Size;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

/**
 * A sheet of paper, curled as paper curls, before a camera: where it stands, how the lens draws,
 * how the sheet was printed, and how it is curled.
 *
 * <p>The camera is the pinhole camera of photogrammetry with two terms of radial distortion (Brown,
 * "Close-range camera calibration", 1971), looking through the picture's middle.
 */
final class CurledPage implements PageMap {

  /** Where each number stands: the logarithm of the focal length in pixels. */
  static final int FOCAL = 0;

  /** The logarithm of the pixels for a millimetre in the sheet's middle. */
  static final int SIZE = 1;

  /** Where the sheet's middle is seen, in pixels from the picture's middle; two numbers. */
  static final int MIDDLE = 2;

  /** How the sheet is turned from the first guess, as a rotation vector; three numbers. */
  static final int TURN = 4;

  /** The lens's two terms. */
  static final int LENS = 7;

  /** By what share the print is wider than it should be for its height. */
  static final int STRETCH = 9;

  /** How much of each shape of {@link PaperCurl}, in millimetres. */
  static final int CURL = 10;

  static final int NUMBERS = CURL + PaperCurl.SHAPES;

  private final PaperCurl paper;
  private final Size picture;
  private final double[] firstTurn;
  private final double[] numbers;
  private final double[] turn;

  private CurledPage(PaperCurl paper, Size picture, double[] firstTurn, double[] numbers) {
    this.paper = paper;
    this.picture = picture;
    this.firstTurn = firstTurn;
    this.numbers = numbers;
    this.turn = product(rotation(numbers), firstTurn);
  }

  /**
   * A flat sheet that a flat map shows, as a usual phone's camera sees it.
   *
   * @param focal length in pixels
   */
  static CurledPage like(FlatPage flat, Paper paper, Size picture, double focal) {
    double[] h = flat.perspective();
    double midX = paper.width() / 2;
    double midY = paper.height() / 2;
    double[] right = ray(h[0], h[3], h[6], picture, focal);
    double[] down = ray(h[1], h[4], h[7], picture, focal);
    double[] middle =
        ray(
            h[0] * midX + h[1] * midY + h[2],
            h[3] * midX + h[4] * midY + h[5],
            h[6] * midX + h[7] * midY + h[8],
            picture,
            focal);
    double sign = Math.signum(middle[2]);
    double scale = sign * 2 / (norm(right) + norm(down));
    double[] numbers = new double[NUMBERS];
    numbers[FOCAL] = Math.log(focal);
    numbers[SIZE] = Math.log(focal / (middle[2] * scale));
    numbers[MIDDLE] = focal * middle[0] / middle[2];
    numbers[MIDDLE + 1] = focal * middle[1] / middle[2];
    return new CurledPage(new PaperCurl(paper), picture, upright(right, down, sign), numbers);
  }

  /** A direction in the picture as a ray from the camera. */
  private static double[] ray(double x, double y, double w, Size picture, double focal) {
    return new double[] {
      (x - w * (picture.width - 1) / 2) / focal, (y - w * (picture.height - 1) / 2) / focal, w
    };
  }

  /** The rotation whose first two columns are nearest to two directions. */
  private static double[] upright(double[] right, double[] down, double sign) {
    double[] a = times(right, sign / norm(right));
    double[] b = times(down, sign / norm(down));
    double[] sum = {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    double[] difference = {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    sum = times(sum, 1 / norm(sum));
    difference = times(difference, 1 / norm(difference));
    double[] x =
        times(
            new double[] {sum[0] + difference[0], sum[1] + difference[1], sum[2] + difference[2]},
            Math.sqrt(0.5));
    double[] y =
        times(
            new double[] {sum[0] - difference[0], sum[1] - difference[1], sum[2] - difference[2]},
            Math.sqrt(0.5));
    double[] z = {x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]};
    return new double[] {x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]};
  }

  /** The numbers that make it, in the order of this class's constants. */
  double[] numbers() {
    return numbers.clone();
  }

  /** The same sheet and camera with other numbers. */
  CurledPage with(double[] others) {
    return new CurledPage(paper, picture, firstTurn, others.clone());
  }

  /** The shapes that the sheet may take. */
  PaperCurl paper() {
    return paper;
  }

  @Override
  public Point toPixel(MmPoint place) {
    return toPixel(paper.at(place));
  }

  /** Where a place lies in the picture. */
  Point toPixel(PaperCurl.Place place) {
    return toPixel(place, 0);
  }

  /** Where a place lies in the picture if it stands so many millimetres higher. */
  Point toPixel(PaperCurl.Place place, double higher) {
    double[] space = new double[3];
    place.move(numbers, CURL, space);
    space[2] += higher;
    double x = space[0] * (1 + numbers[STRETCH]);
    double y = space[1];
    double z = -space[2];
    double focal = Math.exp(numbers[FOCAL]);
    double distance = focal / Math.exp(numbers[SIZE]);
    double ahead = turn[6] * x + turn[7] * y + turn[8] * z + distance;
    double right =
        (turn[0] * x + turn[1] * y + turn[2] * z + numbers[MIDDLE] / focal * distance) / ahead;
    double down =
        (turn[3] * x + turn[4] * y + turn[5] * z + numbers[MIDDLE + 1] / focal * distance) / ahead;
    double r = right * right + down * down;
    double drawn = focal * (1 + numbers[LENS] * r + numbers[LENS + 1] * r * r);
    return new Point(
        (picture.width - 1) / 2 + drawn * right, (picture.height - 1) / 2 + drawn * down);
  }

  /** The rotation about a vector by its length (Rodrigues' formula), row by row. */
  private static double[] rotation(double[] numbers) {
    double[] v = Arrays.copyOfRange(numbers, TURN, TURN + 3);
    double angle = norm(v);
    if (angle < 1e-12) {
      return new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
    }
    double x = v[0] / angle;
    double y = v[1] / angle;
    double z = v[2] / angle;
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double d = 1 - c;
    return new double[] {
      c + x * x * d,
      x * y * d - z * s,
      x * z * d + y * s,
      y * x * d + z * s,
      c + y * y * d,
      y * z * d - x * s,
      z * x * d - y * s,
      z * y * d + x * s,
      c + z * z * d
    };
  }

  private static double[] product(double[] a, double[] b) {
    double[] product = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          product[3 * row + column] += a[3 * row + k] * b[3 * k + column];
        }
      }
    }
    return product;
  }

  private static double norm(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  private static double[] times(double[] v, double factor) {
    return new double[] {v[0] * factor, v[1] * factor, v[2] * factor};
  }
}
