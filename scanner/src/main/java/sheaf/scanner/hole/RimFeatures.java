package sheaf.scanner.hole;

import java.util.List;
import java.util.Locale;

/**
 * The numbers that describe a rim seen from a centre, for a shaft's radius: the mean share of each
 * sign in bands around the shaft's circle, and how far the centre lies off the opening's middle.
 */
final class RimFeatures {

  /** Borders of the bands, in pixels outward from the shaft's circle; a border opens its band. */
  private static final int[] BORDERS = {
    -32, -26, -20, -16, -13, -10, -8, -6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 8, 10, 13, 16, 21
  };

  private static final int BANDS = BORDERS.length - 1;

  private static final RimProfile.Sign[] SIGNS = RimProfile.Sign.values();

  /** Beyond this share of the diameter, being off the opening's middle tells no more. */
  private static final double FAR_OFF = 0.2;

  /** How many numbers. */
  static final int COUNT = SIGNS.length * BANDS + 3;

  private RimFeatures() {}

  /**
   * Describes a rim.
   *
   * @param radius of the shaft, in pixels
   * @param off from the opening's middle, as a share of the shaft's diameter
   */
  static float[] of(RimProfile rim, double radius, double off) {
    float[] features = new float[COUNT];
    for (RimProfile.Sign sign : SIGNS) {
      for (int band = 0; band < BANDS; band++) {
        float sum = 0;
        for (int from = BORDERS[band]; from < BORDERS[band + 1]; from++) {
          sum += between(rim, sign, radius + from);
        }
        features[sign.ordinal() * BANDS + band] = sum / (BORDERS[band + 1] - BORDERS[band]);
      }
    }
    System.arraycopy(way(off), 0, features, COUNT - 3, 3);
    return features;
  }

  private static float[] way(double off) {
    return new float[] {(float) off, (float) (off * off), (float) Math.min(off, FAR_OFF)};
  }

  private static float between(RimProfile rim, RimProfile.Sign sign, double distance) {
    int before = (int) Math.floor(distance);
    float within = (float) (distance - before);
    float share = (1 - within) * rim.share(sign, before);
    return within == 0 ? share : share + within * rim.share(sign, before + 1);
  }

  /** The weighted sum of a rim's numbers, worked out without them for whole pixels of radius. */
  static final class Sum {

    private final float[][] weights = new float[SIGNS.length][BORDERS[BANDS] - BORDERS[0]];
    private final double[] way;

    /** Takes a weight for each number. */
    Sum(double[] each) {
      for (int band = 0; band < BANDS; band++) {
        for (int from = BORDERS[band]; from < BORDERS[band + 1]; from++) {
          for (int sign = 0; sign < SIGNS.length; sign++) {
            weights[sign][from - BORDERS[0]] =
                (float) (each[sign * BANDS + band] / (BORDERS[band + 1] - BORDERS[band]));
          }
        }
      }
      way = new double[] {each[COUNT - 3], each[COUNT - 2], each[COUNT - 1]};
    }

    /** The sum for each radius in a range, without what the way off the middle adds. */
    float[] each(RimProfile rim, int least, int most) {
      float[] sums = new float[most - least + 1];
      float[] shares = new float[sums.length + weights[0].length];
      for (RimProfile.Sign sign : SIGNS) {
        rim.shares(sign, least + BORDERS[0], shares);
        float[] each = weights[sign.ordinal()];
        for (int i = 0; i < each.length; i++) {
          addShifted(sums, each[i], shares, i);
        }
      }
      return sums;
    }

    /** Radii side by side, so that the compiler takes several at once. */
    private static void addShifted(float[] sums, float weight, float[] shares, int shift) {
      for (int i = 0; i < sums.length; i++) {
        sums[i] += weight * shares[shift + i];
      }
    }

    /** What being off the opening's middle by a share of the diameter adds. */
    double off(double off) {
      return way[0] * off + way[1] * off * off + way[2] * Math.min(off, FAR_OFF);
    }
  }

  /** What a number is called. */
  static String name(int feature) {
    int band = feature % BANDS;
    return feature < SIGNS.length * BANDS
        ? String.format(
            Locale.ROOT,
            "%s %d..%d",
            SIGNS[feature / BANDS].name().toLowerCase(Locale.ROOT).replace('_', ' '),
            BORDERS[band],
            BORDERS[band + 1] - 1)
        : List.of("off", "off squared", "off at most 0.2").get(feature - SIGNS.length * BANDS);
  }
}
