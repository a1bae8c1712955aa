package sheaf.scanner.hole;

import org.opencv.core.Mat;

/** Two rows of a picture at a time, whose pixels are taken by fours. */
final class Pairs {

  private final Mat picture;
  private final int channels;
  private final int last;
  private final byte[] upper;
  private final byte[] lower;
  private int read = -1;

  Pairs(Mat picture) {
    this.picture = picture;
    this.channels = picture.channels();
    this.last = picture.cols() - 1;
    this.upper = new byte[picture.cols() * channels];
    this.lower = new byte[picture.cols() * channels];
  }

  /** Reads two rows, unless they are the last ones read. */
  Pairs at(int pair) {
    if (pair != read) {
      read = pair;
      read(pair);
    }
    return this;
  }

  void read(int pair) {
    picture.get(2 * pair, 0, upper);
    picture.get(Math.min(2 * pair + 1, picture.rows() - 1), 0, lower);
  }

  /** The sum of each four pixels; a last odd one counts twice. */
  void sums(int channel, float[] sums) {
    int whole = (last + 1) / 2;
    for (int x = 0, i = channel; x < whole; x++, i += 2 * channels) {
      int beside = i + channels;
      sums[x] =
          (upper[i] & 0xFF) + (upper[beside] & 0xFF) + (lower[i] & 0xFF) + (lower[beside] & 0xFF);
    }
    if (whole < sums.length) {
      int i = last * channels + channel;
      sums[whole] = 2 * ((upper[i] & 0xFF) + (lower[i] & 0xFF));
    }
  }

  /** How surely the colour that lies behind is seen, in the mean of four pixels. */
  float backing(int four, float blue, float green, float red, BehindColour behind) {
    int left = 2 * four * channels;
    int right = Math.min(2 * four + 1, last) * channels;
    return (of(upper, left, blue, green, red, behind)
            + of(upper, right, blue, green, red, behind)
            + of(lower, left, blue, green, red, behind)
            + of(lower, right, blue, green, red, behind))
        / 4;
  }

  private static float of(
      byte[] row, int at, float blue, float green, float red, BehindColour behind) {
    return behind.share(
        behind.amount(
            (row[at] & 0xFF) * blue, (row[at + 1] & 0xFF) * green, (row[at + 2] & 0xFF) * red));
  }
}
