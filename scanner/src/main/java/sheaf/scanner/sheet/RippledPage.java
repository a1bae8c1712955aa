package sheaf.scanner.sheet;

import java.util.Arrays;
import java.util.List;
import org.opencv.core.Point;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

/**
 * A curled page with ripples too short for its shapes, as damp paper has: low hills side by side,
 * as high as what is printed near them says, and none where nothing says so.
 */
final class RippledPage implements PageMap {

  /** From one hill to the next, in millimetres. */
  private static final double APART = 24;

  /** Standard deviation of a hill's bell shape, in millimetres: two make half a ripple. */
  private static final double BROAD = 20;

  /** How high a hill usually is, in millimetres, before anything is seen of it. */
  private static final double HEIGHT_SPREAD = 0.5;

  /** How exactly something printed is seen, in pixels. */
  private static final double EXACT = 0.5;

  /** What is off by more than so many pixels counts less and less: it is something else. */
  private static final double TOLERANT = 4;

  /** Times that the weights are found anew. */
  private static final int ROUNDS = 3;

  private final CurledPage page;
  private final int columns;
  private final int rows;
  private final double[] heights;

  private RippledPage(CurledPage page, Paper paper, double[] heights) {
    this.page = page;
    this.columns = columns(paper);
    this.rows = rows(paper);
    this.heights = heights;
  }

  private static int columns(Paper paper) {
    return (int) Math.ceil(paper.width() / APART) + 1;
  }

  private static int rows(Paper paper) {
    return (int) Math.ceil(paper.height() / APART) + 1;
  }

  /** The ripples that explain best what the page alone does not. */
  static RippledPage fit(CurledPage page, Paper paper, List<Sighting> sightings) {
    RippledPage flat = new RippledPage(page, paper, new double[columns(paper) * rows(paper)]);
    double[][] effects = new double[sightings.size()][];
    double[] off = new double[sightings.size()];
    for (int i = 0; i < off.length; i++) {
      Sighting seen = sightings.get(i);
      PaperCurl.Place place = page.paper().at(seen.place());
      off[i] = seen.off(page.toPixel(place));
      double raised = seen.off(page.toPixel(place, 1)) - off[i];
      effects[i] = flat.shares(seen.place());
      for (int k = 0; k < effects[i].length; k++) {
        effects[i][k] *= raised;
      }
    }
    double[] heights = flat.heights;
    for (int round = 0; round < ROUNDS; round++) {
      heights = solved(effects, off, heights);
    }
    return new RippledPage(page, paper, heights);
  }

  private static double[] solved(double[][] effects, double[] off, double[] before) {
    NormalEquations equations = new NormalEquations(before.length);
    for (int i = 0; i < off.length; i++) {
      double left = (off[i] + dot(effects[i], before)) / TOLERANT;
      equations.add(effects[i], -off[i], 1 / (EXACT * EXACT * (1 + left * left)));
    }
    double[] one = new double[before.length];
    for (int k = 0; k < one.length; k++) {
      Arrays.fill(one, 0);
      one[k] = 1;
      equations.add(one, 0, 1 / (HEIGHT_SPREAD * HEIGHT_SPREAD));
    }
    return equations.solve(0);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** How much of each hill's height a place has. */
  private double[] shares(MmPoint place) {
    double[] across = bells(place.x(), columns);
    double[] down = bells(place.y(), rows);
    double[] shares = new double[columns * rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        shares[row * columns + column] = across[column] * down[row];
      }
    }
    return shares;
  }

  private static double[] bells(double at, int count) {
    double[] bells = new double[count];
    for (int i = 0; i < count; i++) {
      double away = (at - i * APART) / BROAD;
      bells[i] = Math.exp(-away * away / 2);
    }
    return bells;
  }

  @Override
  public Point toPixel(MmPoint place) {
    return page.toPixel(page.paper().at(place), dot(shares(place), heights));
  }
}
