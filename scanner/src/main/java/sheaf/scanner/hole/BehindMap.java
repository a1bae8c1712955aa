package sheaf.scanner.hole;

import java.util.List;
import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/** Where the colour that lies behind a sheet is seen, worked out where it is looked at. */
public final class BehindMap {

  /** Over so many pixels a weak colour is smoothed, so that a camera's noise does not show it. */
  private static final double SMOOTH = 1.5;

  /** What lies so many times that far off still counts. */
  private static final double SMOOTHED = 4;

  private final Mat colour;
  private final List<PaperTone> tints;
  private BehindColour behind = BehindColour.BACKING;

  private BehindMap(Mat colour, List<PaperTone> tints) {
    this.colour = colour;
    this.tints = tints;
  }

  /** Of a sheet's blue, green and red, which are looked at as long as this is used. */
  static BehindMap of(Mat colour) {
    return new BehindMap(colour, PaperTone.of(colour));
  }

  /** Looks which colour it is; unless another one shows, it may be the backing's. */
  void see(Rect sought, int least) {
    behind = BehindSearch.in(colour, tints, sought, least).orElse(BehindColour.BACKING);
  }

  /** Whether the colour is so weak that dark openings tell more. */
  boolean isWeak() {
    return behind.isWeak();
  }

  /** Where a pen wrote in a square, as far as colour tells. */
  PenInk penInk(Seeds.Kind kind, Square square) {
    return PenInk.in(
        colour, square, kind == Seeds.Kind.COLOURED ? Optional.of(behind) : Optional.empty());
  }

  /**
   * How surely each place of the whole sheet shows the colour that lies behind, 0 to 1, half as
   * fine; the caller releases it.
   */
  public Mat half() {
    int columns = (colour.cols() + 1) / 2;
    int rows = (colour.rows() + 1) / 2;
    Mat half = new Mat(rows, columns, CvType.CV_32F);
    Pairs pairs = new Pairs(colour);
    byte[] means = new byte[3 * columns];
    float[] values = new float[columns];
    List<PaperTone.Rows> tintRows = tints.stream().map(tint -> tint.rows(0.5, 2, columns)).toList();
    try (Mats mats = new Mats()) {
      Mat mean = mats.own(Halves.of(colour));
      for (int y = 0; y < rows; y++) {
        mean.get(y, 0, means);
        float[][] whites = whites(tintRows, 2 * y + 0.5);
        for (int x = 0; x < columns; x++) {
          float blue = whites[0][x];
          float green = whites[1][x];
          float red = whites[2][x];
          float amount =
              behind.amount(
                  (means[3 * x] & 0xFF) * blue,
                  (means[3 * x + 1] & 0xFF) * green,
                  (means[3 * x + 2] & 0xFF) * red);
          if (behind.isWeak()) {
            values[x] = amount;
          } else {
            values[x] =
                amount < behind.none() ? 0 : pairs.at(y).backing(x, blue, green, red, behind);
          }
        }
        half.put(y, 0, values);
      }
    }
    if (behind.isWeak()) {
      smoothShares(half, SMOOTH / 2);
    }
    return half;
  }

  /** Turns amounts of a weak colour into shares. */
  private void smoothShares(Mat amounts, double deviation) {
    Imgproc.GaussianBlur(amounts, amounts, new Size(0, 0), deviation);
    float[] row = new float[amounts.cols()];
    for (int y = 0; y < amounts.rows(); y++) {
      amounts.get(y, 0, row);
      for (int x = 0; x < row.length; x++) {
        row[x] = behind.share(row[x]);
      }
      amounts.put(y, 0, row);
    }
  }

  /** One divided by the paper's tones, of blue, green and red along a row. */
  private static float[][] whites(List<PaperTone.Rows> tints, double y) {
    float[][] whites = new float[tints.size()][];
    for (int channel = 0; channel < whites.length; channel++) {
      whites[channel] = tints.get(channel).whites(y);
    }
    return whites;
  }

  /** How surely each place of a square shows the colour that lies behind, 0 to 1, row by row. */
  public float[] in(Square square) {
    return behind.isWeak() ? smoothed(square) : amounts(square);
  }

  private float[] smoothed(Square square) {
    Square wide = square.grow((int) Math.ceil(SMOOTHED * SMOOTH));
    float[] shares = amounts(wide);
    try (Mats mats = new Mats()) {
      Mat map = mats.own(new Mat(wide.side(), wide.side(), CvType.CV_32F));
      map.put(0, 0, shares);
      smoothShares(map, SMOOTH);
      map.get(0, 0, shares);
    }
    return wide.middle(shares, square.left() - wide.left());
  }

  /** Amounts of a weak colour, shares of another. */
  private float[] amounts(Square square) {
    int side = square.side();
    byte[] bytes = square.bytes(colour);
    float[] backing = new float[square.pixels()];
    List<PaperTone.Rows> tintRows =
        tints.stream().map(tint -> tint.rows(square.left(), 1, side)).toList();
    int end = square.endColumn(colour.cols());
    int last = square.endRow(colour.rows());
    for (int y = square.firstRow(); y < last; y++) {
      float[][] whites = whites(tintRows, (double) square.top() + y);
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * side + x;
        float amount =
            behind.amount(
                (bytes[3 * i] & 0xFF) * whites[0][x],
                (bytes[3 * i + 1] & 0xFF) * whites[1][x],
                (bytes[3 * i + 2] & 0xFF) * whites[2][x]);
        backing[i] = behind.isWeak() ? amount : behind.share(amount);
      }
    }
    return backing;
  }
}
