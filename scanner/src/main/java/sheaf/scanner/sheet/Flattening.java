package sheaf.scanner.sheet;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.Mats;

/** Resamples a picture onto the page as designed. */
final class Flattening {

  /** The map is computed for blocks of so many pixels and interpolated: it is smooth. */
  private static final int GRID = 16;

  /** A picture finer than this many times the flat sheet is averaged down first. */
  private static final double FINE = 1.5;

  private Flattening() {}

  static FlatSheet flatten(Mat grey, Optional<Mat> colour, Geometry geometry) {
    double resolution = geometry.pixelsPerMm();
    double reduction = Math.min(1, FINE * FlatSheet.PIXELS_PER_MM / resolution);
    Paper paper = geometry.family().paper();
    try (Mats mats = new Mats()) {
      Mat map = map(geometry, reduction, mats);
      if (colour.isEmpty()) {
        return new FlatSheet(resample(grey, map, reduction, paper), Optional.empty(), resolution);
      }
      Mat flat = resample(colour.get(), map, reduction, paper);
      Mat flatGrey = new Mat();
      Imgproc.cvtColor(flat, flatGrey, Imgproc.COLOR_BGR2GRAY);
      return new FlatSheet(flatGrey, Optional.of(flat), resolution);
    }
  }

  private static Mat resample(Mat picture, Mat map, double reduction, Paper paper) {
    try (Mats mats = new Mats()) {
      Mat source = picture;
      if (reduction < 1) {
        source = mats.mat();
        Imgproc.resize(picture, source, new Size(), reduction, reduction, Imgproc.INTER_AREA);
      }
      return Remapping.of(source, map, GRID, columns(paper), rows(paper));
    }
  }

  /** For every block of the flat sheet, where its middle comes from. */
  private static Mat map(Geometry geometry, double reduction, Mats mats) {
    Paper paper = geometry.family().paper();
    int coarseColumns = columns(paper) / GRID + 2;
    int coarseRows = rows(paper) / GRID + 2;
    Mat coarse = mats.own(new Mat(coarseRows, coarseColumns, CvType.CV_32FC2));
    float[] row = new float[coarseColumns * 2];
    for (int r = 0; r < coarseRows; r++) {
      for (int c = 0; c < coarseColumns; c++) {
        // The middle of the block of pixels that this entry is enlarged to.
        double x = (c + 0.5) * GRID - 0.5;
        double y = (r + 0.5) * GRID - 0.5;
        Point from = geometry.toPixel(FlatSheet.toPage(x, y));
        row[2 * c] = (float) ((from.x + 0.5) * reduction - 0.5);
        row[2 * c + 1] = (float) ((from.y + 0.5) * reduction - 0.5);
      }
      coarse.put(r, 0, row);
    }
    return coarse;
  }

  private static int columns(Paper paper) {
    return (int) Math.round(paper.width() * FlatSheet.PIXELS_PER_MM);
  }

  private static int rows(Paper paper) {
    return (int) Math.round(paper.height() * FlatSheet.PIXELS_PER_MM);
  }
}
