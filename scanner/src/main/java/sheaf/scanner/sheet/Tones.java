package sheaf.scanner.sheet;

/** Tones of pixels. */
public final class Tones {

  private static final int LEVELS = 256;

  private Tones() {}

  /**
   * The tone below which a share of the pixels lies, 1 to 255.
   *
   * @param bytes of all channels of all pixels
   * @param first index of the channel in each pixel
   * @param channels of a pixel
   * @param share of the pixels, 0 to 1
   */
  public static int percentile(byte[] bytes, int first, int channels, double share) {
    int[] histogram = new int[LEVELS];
    for (int i = first; i < bytes.length; i += channels) {
      histogram[bytes[i] & 0xFF]++;
    }
    int left = (int) (bytes.length / channels * share);
    int tone = 0;
    while (tone < LEVELS - 1 && left >= histogram[tone]) {
      left -= histogram[tone++];
    }
    return Math.max(1, tone);
  }
}
