package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/**
 * The tone of the plain paper at each place of a sheet, in one channel: light and tint, without
 * what lies on the paper. It changes slowly, so it is known at every tenth pixel and interpolated.
 */
public final class PaperTone {

  /** The paper's tone is sought on a picture reduced by this factor. */
  private static final int REDUCTION = 10;

  /**
   * Window of the median that is taken for the paper's tone, in reduced pixels (millimetres): more
   * than twice as wide as any hole or ring, so that paper has the majority.
   */
  private static final int WINDOW = 31;

  /** So many rows of a sheet share their tones: from one to the next nothing can be seen of it. */
  private static final int BAND = 4;

  /** No band yet. */
  private static final int NONE = Integer.MIN_VALUE;

  private final float[] tones;
  private final int columns;
  private final int rows;

  private PaperTone(float[] tones, int columns, int rows) {
    this.tones = tones;
    this.columns = columns;
    this.rows = rows;
  }

  /** Of each channel of a picture. */
  public static List<PaperTone> of(Mat picture) {
    try (Mats mats = new Mats()) {
      Mat small = mats.mat();
      double scale = 1.0 / REDUCTION;
      Imgproc.resize(picture, small, new Size(), scale, scale, Imgproc.INTER_AREA);
      List<Mat> channels = new ArrayList<>();
      Core.split(small, channels);
      channels.forEach(mats::own);
      return channels.stream().map(PaperTone::median).toList();
    }
  }

  private static PaperTone median(Mat small) {
    try (Mats mats = new Mats()) {
      Mat median = mats.mat();
      Imgproc.medianBlur(small, median, WINDOW);
      byte[] bytes = new byte[(int) median.total()];
      median.get(0, 0, bytes);
      float[] tones = new float[bytes.length];
      for (int i = 0; i < tones.length; i++) {
        // Around a photographed sheet it may be black, and nothing divides by nothing.
        tones[i] = Math.max(1, bytes[i] & 0xFF);
      }
      return new PaperTone(tones, median.cols(), median.rows());
    }
  }

  /** The tones over the whole sheet at some size, 8-bit; the caller releases it. */
  Mat over(Size size) {
    try (Mats mats = new Mats()) {
      Mat known = mats.own(new Mat(rows, columns, CvType.CV_32F));
      known.put(0, 0, tones);
      known.convertTo(known, CvType.CV_8U);
      Mat over = new Mat();
      Imgproc.resize(known, over, size, 0, 0, Imgproc.INTER_LINEAR);
      return over;
    }
  }

  /**
   * The tones along rows that begin alike.
   *
   * @param x of the first place, in pixels of the sheet
   * @param step from place to place, in pixels
   * @param count of the places
   */
  public Rows rows(double x, double step, int count) {
    return new Rows(x, step, count);
  }

  /** Interpolates along one row after another, which may not be written to. */
  public final class Rows {

    private final int[] before;
    private final float[] within;
    private final float[] line = new float[columns];
    private final float[] row;
    private final float[] whites;
    private int band = NONE;
    private int bandOfWhites = NONE;

    private Rows(double x, double step, int count) {
      before = new int[count];
      within = new float[count];
      row = new float[count];
      whites = new float[count];
      for (int i = 0; i < count; i++) {
        double at = place(x + i * step, columns);
        before[i] = Math.min((int) at, columns - 2);
        within[i] = (float) (at - before[i]);
      }
    }

    /**
     * The tones along one row.
     *
     * @param y of the row, in pixels of the sheet
     */
    public float[] at(double y) {
      int wanted = (int) Math.floor(y / BAND);
      if (wanted != band) {
        band = wanted;
        interpolate((wanted + 0.5) * BAND - 0.5);
      }
      return row;
    }

    /** One divided by the tones along a row. */
    float[] whites(double y) {
      at(y);
      if (bandOfWhites != band) {
        bandOfWhites = band;
        for (int i = 0; i < row.length; i++) {
          whites[i] = 1 / row[i];
        }
      }
      return whites;
    }

    private void interpolate(double y) {
      double down = place(y, rows);
      int upper = Math.min((int) down, rows - 2);
      float below = (float) (down - upper);
      for (int i = 0; i < columns; i++) {
        float above = tones[upper * columns + i];
        line[i] = above + below * (tones[(upper + 1) * columns + i] - above);
      }
      for (int i = 0; i < before.length; i++) {
        float left = line[before[i]];
        row[i] = left + within[i] * (line[before[i] + 1] - left);
      }
    }
  }

  private static double place(double pixel, int known) {
    return Math.max(0, Math.min(known - 1, (pixel + 0.5) / REDUCTION - 0.5));
  }
}
