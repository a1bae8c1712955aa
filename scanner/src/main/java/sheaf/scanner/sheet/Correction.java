package sheaf.scanner.sheet;

import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.Mats;

/**
 * A smooth displacement over the page: the eight-term polynomial that eight edge points carry (1,
 * u, v, uv, u2, v2, u2v, uv2; the serendipity element of finite elements, after Ergatoudis, Irons
 * and Zienkiewicz 1968), u and v running from -1 to 1 over the page.
 */
final class Correction {

  private static final int TERMS = 8;

  /** No displacement anywhere. */
  static Correction none(Paper paper) {
    return new Correction(paper, new double[TERMS], new double[TERMS]);
  }

  private final Paper paper;
  private final double[] across;
  private final double[] down;

  private Correction(Paper paper, double[] across, double[] down) {
    this.paper = paper;
    this.across = across;
    this.down = down;
  }

  /**
   * Fits displacements by least squares.
   *
   * @param places on the page; they must cover all eight marks for the terms to be determined
   * @param displacements in pixels, one for each place
   */
  static Correction fit(Paper paper, List<MmPoint> places, List<Point> displacements) {
    try (Mats mats = new Mats()) {
      Mat terms = mats.own(new Mat(places.size(), TERMS, CvType.CV_64F));
      Mat moves = mats.own(new Mat(places.size(), 2, CvType.CV_64F));
      for (int i = 0; i < places.size(); i++) {
        terms.put(i, 0, terms(paper, places.get(i)));
        moves.put(i, 0, displacements.get(i).x, displacements.get(i).y);
      }
      Mat solved = mats.mat();
      Core.solve(terms, moves, solved, Core.DECOMP_SVD);
      double[] across = new double[TERMS];
      double[] down = new double[TERMS];
      for (int i = 0; i < TERMS; i++) {
        across[i] = solved.get(i, 0)[0];
        down[i] = solved.get(i, 1)[0];
      }
      return new Correction(paper, across, down);
    }
  }

  /** The displacement at a place: pixels across, pixels down. */
  double[] at(MmPoint place) {
    double[] terms = terms(paper, place);
    double x = 0;
    double y = 0;
    for (int i = 0; i < TERMS; i++) {
      x += across[i] * terms[i];
      y += down[i] * terms[i];
    }
    return new double[] {x, y};
  }

  private static double[] terms(Paper paper, MmPoint place) {
    double u = place.x() / paper.width() * 2 - 1;
    double v = place.y() / paper.height() * 2 - 1;
    return new double[] {1, u, v, u * v, u * u, v * v, u * u * v, u * v * v};
  }
}
