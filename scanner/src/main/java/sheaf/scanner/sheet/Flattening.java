package sheaf.scanner.sheet;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.Mats;

/** Resamples a picture onto the page as designed. */
final class Flattening {

  /** The map is computed for blocks of so many pixels and interpolated: it is smooth. */
  private static final int GRID = 32;

  /** A picture finer than this many times the flat sheet is averaged down first. */
  private static final double FINE = 1.5;

  /** Places along each side of a part at which it is asked for in the picture. */
  private static final int ALONG = 8;

  /** Pixels beyond those places: a curled edge bows out between them. */
  private static final int MARGIN = 40;

  private Flattening() {}

  /** The whole sheet; a picture's colours are kept. */
  static FlatSheet flatten(Mat picture, Geometry geometry) {
    Paper paper = geometry.family().paper();
    MmRect page = new MmRect(0, 0, paper.width(), paper.height());
    Mat flat = part(picture, geometry.map(), page, FlatSheet.PIXELS_PER_MM);
    double resolution = geometry.pixelsPerMm();
    if (flat.channels() == 1) {
      return new FlatSheet(flat, Optional.empty(), resolution);
    }
    Mat grey = new Mat();
    Imgproc.cvtColor(flat, grey, Imgproc.COLOR_BGR2GRAY);
    return new FlatSheet(grey, Optional.of(flat), resolution);
  }

  /**
   * A part of the sheet.
   *
   * @param perMm pixels for each millimetre
   */
  static Mat part(Mat picture, PageMap map, MmRect part, double perMm) {
    double resolution = Geometry.pixelsPerMm(map, part.centre());
    double reduction = Math.min(1, FINE * perMm / resolution);
    try (Mats mats = new Mats()) {
      Rect around = around(picture, map, part);
      Mat source = mats.own(picture.submat(around));
      if (reduction < 1) {
        Mat reduced = mats.mat();
        Imgproc.resize(source, reduced, new Size(), reduction, reduction, Imgproc.INTER_AREA);
        source = reduced;
      }
      Mat from = map(map, part, perMm, new Point(around.x, around.y), reduction, mats);
      return Remapping.of(source, from, GRID, columns(part, perMm), rows(part, perMm));
    }
  }

  /** The rectangle of the picture that a part of the sheet lies in, and a little more. */
  private static Rect around(Mat picture, PageMap map, MmRect part) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = 0;
    double bottom = 0;
    for (int i = 0; i <= ALONG; i++) {
      for (int j = 0; j <= ALONG; j++) {
        Point at =
            map.toPixel(
                new MmPoint(
                    part.x() + part.width() * i / ALONG, part.y() + part.height() * j / ALONG));
        left = Math.min(left, at.x);
        top = Math.min(top, at.y);
        right = Math.max(right, at.x);
        bottom = Math.max(bottom, at.y);
      }
    }
    int x = (int) Math.max(0, Math.min(picture.cols() - 1, left - MARGIN));
    int y = (int) Math.max(0, Math.min(picture.rows() - 1, top - MARGIN));
    int width = (int) Math.max(1, Math.min(picture.cols(), right + MARGIN) - x);
    int height = (int) Math.max(1, Math.min(picture.rows(), bottom + MARGIN) - y);
    return new Rect(x, y, width, height);
  }

  private static int columns(MmRect part, double perMm) {
    return (int) Math.round(part.width() * perMm);
  }

  private static int rows(MmRect part, double perMm) {
    return (int) Math.round(part.height() * perMm);
  }

  /** For every block of the flat part, where its middle comes from in what was cut. */
  private static Mat map(
      PageMap map, MmRect part, double perMm, Point cut, double reduction, Mats mats) {
    int coarseColumns = columns(part, perMm) / GRID + 2;
    int coarseRows = rows(part, perMm) / GRID + 2;
    Mat coarse = mats.own(new Mat(coarseRows, coarseColumns, CvType.CV_32FC2));
    float[] row = new float[coarseColumns * 2];
    for (int r = 0; r < coarseRows; r++) {
      for (int c = 0; c < coarseColumns; c++) {
        // The middle of the block of pixels that this entry is enlarged to.
        double x = part.x() + (c + 0.5) * GRID / perMm;
        double y = part.y() + (r + 0.5) * GRID / perMm;
        Point from = map.toPixel(new MmPoint(x, y));
        row[2 * c] = (float) ((from.x - cut.x + 0.5) * reduction - 0.5);
        row[2 * c + 1] = (float) ((from.y - cut.y + 0.5) * reduction - 0.5);
      }
      coarse.put(r, 0, row);
    }
    return coarse;
  }
}
