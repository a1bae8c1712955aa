package sheaf.scanner.tear;

import java.util.Arrays;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.scanner.hole.PaperTone;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A tear sheet's target as {@link EndNet} looks at it: blue, green and red as shares of the paper's
 * tone, one plane after the other, in bytes.
 *
 * @param left of the first pixel's left edge, in millimetres on the page as designed
 * @param top the same, down
 * @param columns across, a multiple of {@link #BLOCK}
 * @param rows down, a multiple of {@link #BLOCK}
 * @param tones row by row, {@link #PAPER} for plain paper
 */
public record TearPicture(double left, double top, int columns, int rows, byte[] tones) {

  /** Pixels a millimetre. */
  public static final int PER_MM = 4;

  /** Both sides are multiples of this, in pixels: the net halves them five times. */
  public static final int BLOCK = 32;

  /** The tone of plain paper: brighter places, up to a quarter more, are kept apart. */
  public static final int PAPER = 200;

  /** How many planes there are. */
  public static final int PLANES = 3;

  private static final int BRIGHTEST = 255;

  /** From pixel to pixel, in pixels of the sheet. */
  private static final double STEP = FlatSheet.PIXELS_PER_MM / PER_MM;

  /** Beyond the target, slits of tears may go on, in millimetres. */
  private static final double AROUND = 4;

  /** Cuts it out of a sheet. */
  public static TearPicture of(FlatSheet sheet, Layout layout) {
    Rect place = sheet.pixels(layout.target().orElseThrow().grow(AROUND));
    Mat picture = sheet.colour().orElse(sheet.grey());
    try (Mats mats = new Mats()) {
      Mat small = mats.mat();
      Mat cut = mats.own(picture.submat(place));
      Size size = new Size(Math.round(place.width / STEP), Math.round(place.height / STEP));
      Imgproc.resize(cut, small, size, 0, 0, Imgproc.INTER_AREA);
      int columns = up(small.cols());
      int rows = up(small.rows());
      byte[] tones = new byte[PLANES * columns * rows];
      Arrays.fill(tones, (byte) PAPER);
      List<PaperTone> papers = PaperTone.of(picture);
      for (int plane = 0; plane < PLANES; plane++) {
        int channel = Math.min(plane, small.channels() - 1);
        fill(tones, plane * columns * rows, columns, small, channel, papers.get(channel), place);
      }
      double mm = FlatSheet.PIXELS_PER_MM;
      return new TearPicture(place.x / mm, place.y / mm, columns, rows, tones);
    }
  }

  /** Fills a plane with a channel's shares of the paper's tone. */
  private static void fill(
      byte[] tones, int first, int columns, Mat small, int channel, PaperTone paper, Rect place) {
    byte[] pixels = new byte[small.cols() * small.channels()];
    double half = (STEP - 1) / 2;
    PaperTone.Rows papers = paper.rows(place.x + half, STEP, small.cols());
    for (int y = 0; y < small.rows(); y++) {
      small.get(y, 0, pixels);
      float[] white = papers.at(place.y + y * STEP + half);
      for (int x = 0; x < white.length; x++) {
        int tone = pixels[x * small.channels() + channel] & 0xFF;
        tones[first + y * columns + x] =
            (byte) Math.min(BRIGHTEST, Math.round(PAPER * tone / white[x]));
      }
    }
  }

  private static int up(int pixels) {
    return (pixels + BLOCK - 1) / BLOCK * BLOCK;
  }
}
