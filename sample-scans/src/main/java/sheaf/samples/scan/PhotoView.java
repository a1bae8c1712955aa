package sheaf.samples.scan;

import java.util.Arrays;
import java.util.SplittableRandom;
import sheaf.core.reading.PrintScale;
import sheaf.samples.raster.Clouds;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/** What the camera sees through each place of the picture. */
final class PhotoView implements Exposure.View {

  /** The white back of a folded corner. */
  private static final float BACK = 240;

  /** A folded corner leans away from the light a little. */
  private static final double FOLD_SHADE = 0.93;

  /** Pixels of a block of the board. */
  private static final int COARSE = 2;

  private final PhonePhoto photo;
  private final PrintScale scale;
  private final Sampler sampler;
  private final double pageWidth;
  private final double pageHeight;
  private final PaperShape.Surface surface;
  private final SmoothMap map;
  private final double lightX;
  private final double lightY;
  private final float[] sheet = new float[2];
  private final float[] board = new float[3];
  private final float[] gain = new float[4];
  private final int[] blockRows;
  private final float[] blocks;

  /** What is known at each node of the map, in this order. */
  private static final int SHEET = 0;

  private static final int BOARD = 2;
  private static final int SHEET_LIGHT = 5;
  private static final int BOARD_LIGHT = 9;
  private static final int NUMBERS = 13;

  PhotoView(PhonePhoto photo, Page page, Backdrop backdrop, SplittableRandom random) {
    this.photo = photo;
    scale = photo.scale();
    blockRows = new int[photo.width() / COARSE + 1];
    blocks = new float[3 * blockRows.length];
    sampler = new Sampler(page, backdrop);
    pageWidth = page.width() / page.pixelsPerMm() * scale.x();
    pageHeight = page.height() / page.pixelsPerMm() * scale.y();
    Sight sight = photo.sight(pageWidth, pageHeight);
    surface = photo.paper().on(pageWidth, pageHeight);
    double from = random.nextDouble(2 * Math.PI);
    double slant = random.nextDouble(0.15, 0.9);
    lightX = slant * Math.cos(from);
    lightY = slant * Math.sin(from);
    Arrays.fill(blockRows, -1);
    map =
        new SmoothMap(
            photo.width(), photo.height(), NUMBERS, new Looking(sight, new Clouds(80, random)));
  }

  /** Fills in a node: what is seen there, and how it is lit. */
  private final class Looking implements SmoothMap.Values {

    private final Sight sight;
    private final double[] camera;
    private final Clouds shadowEdge;
    private final PaperShape.Surface flat = PaperShape.FLAT.on(pageWidth, pageHeight);
    private final double[] onSheet = new double[2];
    private final double[] onBoard = new double[2];
    private final double[] here = new double[3];
    private final double[] near = new double[3];
    private final float[] rgb = new float[3];

    Looking(Sight sight, Clouds shadowEdge) {
      this.sight = sight;
      this.shadowEdge = shadowEdge;
      camera = sight.camera();
    }

    @Override
    public void at(double x, double y, float[] node) {
      double u = 2 * x / photo.width() - 1;
      double v = 2 * y / photo.height() - 1;
      sight.find(surface, x, y, onSheet);
      sight.find(flat, x, y, onBoard);
      node[SHEET] = (float) onSheet[0];
      node[SHEET + 1] = (float) onSheet[1];
      node[BOARD] = (float) onBoard[0];
      node[BOARD + 1] = (float) onBoard[1];
      node[BOARD + 2] = (float) rise(onSheet);
      light(u, v, onSheet, facing(onSheet[0], onSheet[1]), node, SHEET_LIGHT);
      light(u, v, onBoard, 1, node, BOARD_LIGHT);
      double away = Math.hypot(onSheet[0] - camera[0], onSheet[1] - camera[1]);
      node[SHEET_LIGHT + 3] = photo.lighting().mirrored(away, -camera[2]);
    }

    private void light(double u, double v, double[] place, double facing, float[] node, int at) {
      Arrays.fill(rgb, (float) facing);
      photo.lighting().apply(u, v, place[0], place[1], shadowEdge, rgb);
      System.arraycopy(rgb, 0, node, at, rgb.length);
    }

    /** How far the sheet's nearest edge stands off the board. */
    private double rise(double[] place) {
      surface.at(
          Math.max(-pageWidth / 2, Math.min(pageWidth / 2, place[0])),
          Math.max(-pageHeight / 2, Math.min(pageHeight / 2, place[1])),
          here);
      return here[2];
    }

    /** Paper that leans toward the light is brighter. */
    private double facing(double px, double py) {
      surface.at(px, py, here);
      surface.at(px + 0.5, py, near);
      double across = 2 * (near[2] - here[2]);
      surface.at(px, py + 0.5, near);
      double down = 2 * (near[2] - here[2]);
      double upright = Math.sqrt(1 + across * across + down * down);
      return Math.max(0.3, (1 + lightX * across + lightY * down) / upright);
    }
  }

  @Override
  public void light(double x, double y, float[] rgb) {
    map.at(x, y, SHEET, sheet);
    boolean seesSheet =
        Math.abs(sheet[0]) < pageWidth / 2
            && Math.abs(sheet[1]) < pageHeight / 2
            && !folded(sheet[0], sheet[1]);
    if (seesSheet) {
      sheet(sheet[0], sheet[1], rgb);
      map.at(x, y, SHEET_LIGHT, gain);
    } else {
      board((int) x / COARSE, (int) y / COARSE, rgb);
      map.at(x, y, BOARD_LIGHT, gain);
    }
    for (int c = 0; c < rgb.length; c++) {
      rgb[c] = rgb[c] * gain[c] + gain[3];
    }
  }

  /** The board in a block of pixels; it is out of focus anyway. */
  private void board(int column, int row, float[] rgb) {
    if (blockRows[column] != row) {
      blockRows[column] = row;
      double x = (column + 0.5) * COARSE;
      double y = (row + 0.5) * COARSE;
      map.at(x, y, SHEET, sheet);
      map.at(x, y, BOARD, board);
      sampler.beside(
          mm(board[0], pageWidth, scale.x()),
          mm(board[1], pageHeight, scale.y()),
          mm(sheet[0], pageWidth, scale.x()),
          mm(sheet[1], pageHeight, scale.y()),
          board[2],
          rgb);
      System.arraycopy(rgb, 0, blocks, column * rgb.length, rgb.length);
    }
    System.arraycopy(blocks, column * rgb.length, rgb, 0, rgb.length);
  }

  private boolean folded(double px, double py) {
    return photo.paper().dogEar().isPresent()
        && photo.paper().dogEar().get().beyond(px, py, pageWidth, pageHeight) > 0;
  }

  private void sheet(double px, double py, float[] rgb) {
    if (photo.paper().dogEar().isPresent()
        && photo.paper().dogEar().get().covers(px, py, pageWidth, pageHeight)) {
      Arrays.fill(rgb, (float) (BACK * FOLD_SHADE));
    } else {
      sampler.light(mm(px, pageWidth, scale.x()), mm(py, pageHeight, scale.y()), rgb);
    }
  }

  private static double mm(double fromMiddle, double length, double scale) {
    return (fromMiddle + length / 2) / scale;
  }
}
