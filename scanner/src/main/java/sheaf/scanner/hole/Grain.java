package sheaf.scanner.hole;

import org.opencv.core.Mat;
import org.opencv.core.Rect;

/** How uneven plain paper is over a few pixels: its fibres, and the scanner's noise. */
final class Grain {

  /** A pixel is held against the mean of the square that reaches so far from it. */
  private static final int REACH = 2;

  /** Every so many pixels are enough: a sheet has tens of thousands of them then. */
  private static final int PITCH = 8;

  /** A ceiling keeps print and holes out of it. */
  private static final float MOST = 0.05f;

  /** The mean absolute value of bell-shaped noise, in standard deviations. */
  private static final double MEAN_OF_BELL = 0.8;

  private Grain() {}

  /** Standard deviation within a part of a picture, as a share of the paper's tone. */
  static double of(Mat grey, PaperTone tone, Rect part) {
    byte[][] rows = new byte[2 * REACH + 1][grey.cols()];
    PaperTone.Rows toneRows = tone.rows(0, 1, grey.cols());
    double sum = 0;
    int count = 0;
    for (int y = part.y + REACH; y < part.y + part.height - REACH; y += PITCH) {
      for (int i = 0; i < rows.length; i++) {
        grey.get(y + i - REACH, 0, rows[i]);
      }
      float[] tones = toneRows.at(y);
      for (int x = part.x + REACH; x < part.x + part.width - REACH; x += PITCH) {
        sum += Math.min(MOST, offMean(rows, x) / tones[x]);
        count++;
      }
    }
    return count == 0 ? 0 : sum / count / MEAN_OF_BELL;
  }

  private static float offMean(byte[][] rows, int x) {
    int sum = 0;
    for (byte[] row : rows) {
      for (int i = x - REACH; i <= x + REACH; i++) {
        sum += row[i] & 0xFF;
      }
    }
    float mean = sum / (float) (rows.length * rows.length);
    return Math.abs((rows[REACH][x] & 0xFF) - mean);
  }
}
