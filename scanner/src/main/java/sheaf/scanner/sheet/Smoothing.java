package sheaf.scanner.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import sheaf.core.layout.Layout;
import sheaf.core.page.Paper;

/**
 * Takes curl, slant and lens out of a photographed sheet: a first time by its marks, then by the
 * lines that its layout has printed.
 */
final class Smoothing {

  /** Focal length in picture widths of the longer side, as of a phone's main lens. */
  private static final double USUAL_FOCAL = 0.75;

  /**
   * Lines are looked for this far off, in millimetres: first, and again when they are nearly on.
   */
  private static final double[] WITHIN = {3, 1.2};

  /** Of so many parts of the printed lines, one is kept out of the fit to hold it against. */
  private static final int KEPT_OUT = 4;

  /**
   * This share of the places is within what is called off: the rest were mistaken for a neighbour.
   */
  private static final double MOST = 0.9;

  /** Fewer places than this tell nothing of how well a map fits. */
  private static final int TELLING = 8;

  private Smoothing() {}

  /**
   * A map and how well it fits what it was not made from.
   *
   * @param map of the page onto the picture
   * @param off nine in ten places are within this, in millimetres; empty where too little is seen
   */
  record Smooth(PageMap map, OptionalDouble off) {}

  /** The sheet as its marks alone show it. */
  static CurledPage byMarks(Registration.Marks marks, Size picture) {
    double focal = USUAL_FOCAL * Math.max(picture.width, picture.height);
    Paper paper = marks.family().paper();
    FlatPage flat = Registration.leastSquares(marks);
    CurledPage start = CurledPage.like(flat, paper, picture, focal);
    return CurlFit.fit(start, focal, marks.sightings(Math.exp(start.numbers()[CurledPage.SIZE])));
  }

  /** The sheet as its marks and its printed lines show it. */
  static Smooth byLines(Mat picture, Registration.Marks marks, CurledPage rough, Layout layout) {
    double focal = USUAL_FOCAL * Math.max(picture.cols(), picture.rows());
    List<PrintedLines.Place> lines = PrintedLines.of(layout);
    CurledPage page = rough;
    List<Sighting> corners = marks.sightings(Math.exp(rough.numbers()[CurledPage.SIZE]));
    List<Sighting> seen = List.of();
    for (double within : WITHIN) {
      seen = LineFinder.find(picture, page, lines, within);
      page = CurlFit.fit(page, focal, joined(corners, seen));
    }
    List<Sighting> kept = seen.stream().filter(Smoothing::isKeptOut).toList();
    List<Sighting> others = seen.stream().filter(s -> !isKeptOut(s)).toList();
    CurledPage without = CurlFit.fit(page, focal, joined(corners, others));
    return new Smooth(page, off(without, kept));
  }

  /** How far a map is off the lines of a layout, in millimetres; it was not made from them. */
  static OptionalDouble offLines(Mat picture, PageMap map, Layout layout) {
    return off(map, LineFinder.find(picture, map, PrintedLines.of(layout), WITHIN[1]));
  }

  private static boolean isKeptOut(Sighting line) {
    return line.part() % KEPT_OUT == 2;
  }

  private static List<Sighting> joined(List<Sighting> some, List<Sighting> others) {
    List<Sighting> joined = new ArrayList<>(some);
    joined.addAll(others);
    return joined;
  }

  private static OptionalDouble off(PageMap map, List<Sighting> lines) {
    if (lines.size() < TELLING) {
      return OptionalDouble.empty();
    }
    double[] sorted =
        lines.stream().mapToDouble(line -> Math.abs(line.offMm(map))).sorted().toArray();
    return OptionalDouble.of(sorted[(int) (MOST * (sorted.length - 1))]);
  }
}
