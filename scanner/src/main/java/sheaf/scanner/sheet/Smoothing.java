package sheaf.scanner.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  /** Lines that were kept out lie no farther off than they can be seen, in millimetres. */
  private static final double AS_SEEN = 0.05;

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
    Paper paper = marks.family().paper();
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
    if (seen.size() < TELLING) {
      return new Smooth(page, OptionalDouble.empty());
    }
    double smooth = off(without, kept).orElse(0);
    if (smooth <= AS_SEEN) {
      return new Smooth(page, OptionalDouble.of(Math.max(smooth, worstPart(page, seen))));
    }
    // What was kept out tells whether there are ripples or the lines are hard to see.
    double rippled = off(RippledPage.fit(without, paper, joined(corners, others)), kept).orElse(0);
    PageMap map = rippled < smooth ? RippledPage.fit(page, paper, joined(corners, seen)) : page;
    double off = Math.max(Math.min(rippled, smooth), worstPart(map, seen));
    return new Smooth(map, OptionalDouble.of(off));
  }

  /** How far the middle place of a part lies off, on the part that is off most, in millimetres. */
  private static double worstPart(PageMap map, List<Sighting> seen) {
    Map<Integer, List<Double>> parts = new HashMap<>();
    for (Sighting one : seen) {
      parts.computeIfAbsent(one.part(), part -> new ArrayList<>()).add(Math.abs(one.offMm(map)));
    }
    return parts.values().stream()
        .filter(offs -> offs.size() >= TELLING)
        .mapToDouble(offs -> offs.stream().sorted().toList().get(offs.size() / 2))
        .max()
        .orElse(0);
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
