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

  /**
   * The weighted sum of a rim's numbers, worked out without them for whole pixels of radius: the
   * shares are summed up outward once, and a band is what lies between the sums at its borders.
   */
  static final class Sum {

    /** For each border and sign, by how much the weight of a pixel is less beyond than before. */
    private final float[] steps = new float[BORDERS.length * SIGNS.length];

    private final double[] way;

    /** Takes a weight for each number. */
    Sum(double[] each) {
      for (int border = 0; border < BORDERS.length; border++) {
        for (int sign = 0; sign < SIGNS.length; sign++) {
          steps[border * SIGNS.length + sign] =
              (float) (weight(each, sign, border - 1) - weight(each, sign, border));
        }
      }
      way = new double[] {each[COUNT - 3], each[COUNT - 2], each[COUNT - 1]};
    }

    /** Of a pixel in a band; none beyond all bands. */
    private static double weight(double[] each, int sign, int band) {
      return band < 0 || band == BANDS
          ? 0
          : each[sign * BANDS + band] / (BORDERS[band + 1] - BORDERS[band]);
    }

    /** The sum for each radius in a range, without what the way off the middle adds. */
    float[] each(RimProfile rim, int least, int most) {
      int first = least + BORDERS[0];
      int distances = most + BORDERS[BANDS] - first;
      float[] within = new float[(distances + 1) * SIGNS.length];
      for (int i = 0; i < distances; i++) {
        rim.add(first + i, within, i * SIGNS.length);
      }
      float[] sums = new float[most - least + 1];
      for (int i = 0; i < sums.length; i++) {
        float sum = 0;
        for (int border = 0; border < BORDERS.length; border++) {
          int step = border * SIGNS.length;
          int place = (i + BORDERS[border] - BORDERS[0]) * SIGNS.length;
          for (int sign = 0; sign < SIGNS.length; sign++) {
            sum += steps[step + sign] * within[place + sign];
          }
        }
        sums[i] = sum;
      }
      return sums;
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
