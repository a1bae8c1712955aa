package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Finds out which colour lies behind a sheet: spots of one colour, too wide for a pen and too small
 * for tape, half as many as the arrows or more.
 *
 * <p>Wood, straw, a backing of any colour and the sky behind an open frame all show so, in sun and
 * in shadow, since each place is held against the paper around it.
 */
final class BehindSearch {

  /** Spots are sought on a picture reduced by this: halved twice. */
  private static final int REDUCTION = 4;

  private static final double MM = FlatSheet.PIXELS_PER_MM / REDUCTION;

  /** Paper's own tint wanders by less than this, and by less than so many times its median. */
  private static final double LEAST = 0.04;

  private static final double TIMES_MEDIAN = 5;

  /** Pens are narrower than this, in millimetres. */
  private static final double WIDE = 1.9;

  /** Holes with their slits are smaller than this, in square millimetres; tape is larger. */
  private static final double LARGEST = 120;

  /** One colour in light and in shadow: within this angle of hue, in radians. */
  private static final double SAME_HUE = Math.toRadians(18);

  /** And as strong and as light within these factors. */
  private static final double SAME_STRENGTH = 1.7;

  private static final double SAME_LIGHT = 1.8;

  private static final int CHANNELS = 3;

  private final float[][] shares;
  private final float[] strengths;
  private final int columns;

  private BehindSearch(float[][] shares, int columns) {
    this.shares = shares;
    this.columns = columns;
    this.strengths = new float[shares[0].length];
    for (int i = 0; i < strengths.length; i++) {
      float blue = shares[0][i];
      float green = shares[1][i];
      float red = shares[2][i];
      strengths[i] = (float) Spot.strength(Spot.across(blue, red), Spot.up(blue, green, red));
    }
  }

  /** A colour as shares of the paper's, and its hue among colours without brightness. */
  private record Spot(double[] colour, double across, double up) {

    static Spot of(double blue, double green, double red) {
      return new Spot(new double[] {blue, green, red}, across(blue, red), up(blue, green, red));
    }

    static double across(double blue, double red) {
      return (red - blue) / Math.sqrt(2);
    }

    static double up(double blue, double green, double red) {
      return (2 * green - blue - red) / Math.sqrt(6);
    }

    static double strength(double across, double up) {
      return Math.sqrt(across * across + up * up);
    }

    double strength() {
      return strength(across, up);
    }

    double light() {
      return (colour[0] + colour[1] + colour[2]) / CHANNELS;
    }

    boolean isLike(Spot other) {
      double angle =
          Math.acos(
              Math.max(
                  -1,
                  Math.min(
                      1, (across * other.across + up * other.up) / strength() / other.strength())));
      return angle < SAME_HUE
          && within(strength() / other.strength(), SAME_STRENGTH)
          && within(light() / other.light(), SAME_LIGHT);
    }

    private static boolean within(double ratio, double factor) {
      return ratio < factor && ratio > 1 / factor;
    }
  }

  /**
   * Looks for a colour.
   *
   * @param colour the sheet in blue, green, red
   * @param tints of its paper
   * @param sought where holes are sought, in pixels
   * @param least how many spots there must be
   * @return empty where no colour shows
   */
  static Optional<BehindColour> in(Mat colour, List<PaperTone> tints, Rect sought, int least) {
    BehindSearch search = of(colour, tints, sought);
    List<Spot> spots = search.spots();
    return spots.stream()
        .map(spot -> spots.stream().filter(spot::isLike).toList())
        .max(Comparator.comparingInt(List::size))
        .filter(alike -> alike.size() >= least)
        .map(alike -> BehindColour.seen(mean(alike)))
        .filter(behind -> search.spots(behind) >= least);
  }

  private static double[] mean(List<Spot> spots) {
    return IntStream.range(0, CHANNELS)
        .mapToDouble(c -> spots.stream().mapToDouble(spot -> spot.colour[c]).average().orElse(1))
        .toArray();
  }

  private static BehindSearch of(Mat colour, List<PaperTone> tints, Rect sought) {
    try (Mats mats = new Mats()) {
      Mat half = mats.own(Halves.of(mats.own(colour.submat(sought))));
      Mat small = mats.own(Halves.of(half));
      int columns = small.cols();
      byte[] bytes = new byte[(int) small.total() * CHANNELS];
      small.get(0, 0, bytes);
      float[][] shares = new float[CHANNELS][bytes.length / CHANNELS];
      double middle = (REDUCTION - 1) / 2.0;
      for (int c = 0; c < CHANNELS; c++) {
        PaperTone.Rows rows = tints.get(c).rows(sought.x + middle, REDUCTION, columns);
        for (int y = 0; y < small.rows(); y++) {
          float[] tones = rows.at(sought.y + y * REDUCTION + middle);
          for (int x = 0; x < columns; x++) {
            int i = y * columns + x;
            shares[c][i] = (bytes[CHANNELS * i + c] & 0xFF) / tones[x];
          }
        }
      }
      return new BehindSearch(shares, columns);
    }
  }

  private List<Spot> spots() {
    try (Mats mats = new Mats()) {
      Mat labels = mats.mat();
      int count = Imgproc.connectedComponents(wide(mats), labels);
      int[] of = new int[strengths.length];
      labels.get(0, 0, of);
      List<List<Integer>> places = new ArrayList<>();
      for (int i = 1; i < count; i++) {
        places.add(new ArrayList<>());
      }
      for (int i = 0; i < of.length; i++) {
        if (of[i] > 0) {
          places.get(of[i] - 1).add(i);
        }
      }
      return places.stream()
          .filter(spot -> spot.size() < LARGEST * MM * MM)
          .map(this::look)
          .toList();
    }
  }

  /** How many wide spots show a colour; of a pen's blurred line only the middle does. */
  private int spots(BehindColour behind) {
    byte[] set = new byte[strengths.length];
    for (int i = 0; i < set.length; i++) {
      float amount = behind.amount(shares[0][i], shares[1][i], shares[2][i]);
      set[i] = (byte) (behind.share(amount) > 0.5f ? 255 : 0);
    }
    try (Mats mats = new Mats()) {
      return Imgproc.connectedComponents(wide(set, mats), mats.mat()) - 1;
    }
  }

  /** 255 where there is more colour than paper has, as far as it is wide. */
  private Mat wide(Mats mats) {
    float[] sorted = strengths.clone();
    Arrays.sort(sorted);
    double from = Math.max(LEAST, TIMES_MEDIAN * sorted[sorted.length / 2]);
    byte[] set = new byte[strengths.length];
    for (int i = 0; i < set.length; i++) {
      set[i] = (byte) (strengths[i] > from ? 255 : 0);
    }
    return wide(set, mats);
  }

  private Mat wide(byte[] set, Mats mats) {
    Mat wide = mats.own(new Mat(set.length / columns, columns, CvType.CV_8U));
    wide.put(0, 0, set);
    Imgproc.morphologyEx(
        wide, wide, Imgproc.MORPH_OPEN, mats.disc((int) Math.round(WIDE * MM) | 1));
    return wide;
  }

  /** A spot's look: the mean of its more colourful half, which no blurred edge belongs to. */
  private Spot look(List<Integer> places) {
    List<Integer> sorted =
        places.stream()
            .sorted(Comparator.comparingDouble((Integer i) -> strengths[i]).reversed())
            .limit((places.size() + 1) / 2)
            .toList();
    double[] means =
        IntStream.range(0, CHANNELS)
            .mapToDouble(c -> sorted.stream().mapToDouble(i -> shares[c][i]).average().orElse(1))
            .toArray();
    return Spot.of(means[0], means[1], means[2]);
  }
}
