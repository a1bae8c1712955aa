package sheaf.scanner.tear;

import java.util.Arrays;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
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

  /** Beyond the target, slits of tears may go on, in millimetres. */
  private static final double AROUND = 4;

  /** Cuts it out of a sheet. */
  public static TearPicture of(FlatSheet sheet, Layout layout) {
    MmRect target = layout.target().orElseThrow().grow(AROUND);
    Rect place = sheet.pixels(target);
    Mat picture = sheet.colour().orElse(sheet.grey());
    double scale = PER_MM / FlatSheet.PIXELS_PER_MM;
    int width = (int) Math.round(place.width * scale);
    int height = (int) Math.round(place.height * scale);
    int columns = up(width);
    int rows = up(height);
    byte[] tones = new byte[PLANES * columns * rows];
    Arrays.fill(tones, (byte) PAPER);
    try (Mats mats = new Mats()) {
      Mat small = mats.mat();
      Mat cut = mats.own(picture.submat(place));
      Imgproc.resize(cut, small, new Size(width, height), 0, 0, Imgproc.INTER_AREA);
      byte[] pixels = new byte[width * height * small.channels()];
      small.get(0, 0, pixels);
      var papers = PaperTone.of(picture);
      for (int plane = 0; plane < PLANES; plane++) {
        int channel = Math.min(plane, small.channels() - 1);
        PaperTone.Rows paper =
            papers.get(channel).rows(place.x + 0.5 / scale - 0.5, 1 / scale, width);
        float[] white = new float[width];
        for (int y = 0; y < height; y++) {
          paper.at(place.y + (y + 0.5) / scale - 0.5, white);
          int row = (plane * rows + y) * columns;
          for (int x = 0; x < width; x++) {
            int tone = pixels[(y * width + x) * small.channels() + channel] & 0xFF;
            tones[row + x] = (byte) Math.min(255, Math.round(PAPER * tone / white[x]));
          }
        }
      }
    }
    return new TearPicture(
        place.x / FlatSheet.PIXELS_PER_MM, place.y / FlatSheet.PIXELS_PER_MM, columns, rows, tones);
  }

  private static int up(int pixels) {
    return (pixels + BLOCK - 1) / BLOCK * BLOCK;
  }
}
