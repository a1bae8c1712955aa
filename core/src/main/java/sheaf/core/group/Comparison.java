package sheaf.core.group;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import sheaf.core.page.MmVector;

/**
 * Two kinds of shots compared on one or more sheets between which nothing was changed.
 *
 * <p>Each sheet is compared within itself, so that an aim held a little elsewhere on the next sheet
 * shifts nothing; a sheet with n₁ and n₂ shots counts n₁n₂/(n₁+n₂). That is the analysis of a
 * randomized block design; with one sheet it is the plain comparison of two groups.
 *
 * @param sheets at least one
 */
public record Comparison(List<Sheet> sheets) {

  /** With so few shots in all, the round model is told beside the other one. */
  private static final int FEW = 10;

  /** Who would shoot more than this of each head to settle one setting should move on instead. */
  private static final int MOST_EACH = 30;

  /**
   * What was shot at one sheet.
   *
   * @param reference such as field points
   * @param compared such as broadheads
   */
  public record Sheet(Group reference, Group compared) {
    /** How much the sheet's difference of centres counts: its variance is σ² over this. */
    double weight() {
      return 1 / (1.0 / reference.size() + 1.0 / compared.size());
    }

    int freedom() {
      return reference.size() + compared.size() - 2;
    }

    MmVector shift() {
      return compared.centre().minus(reference.centre());
    }

    Covariance scatter() {
      return Covariance.scatter(reference).plus(Covariance.scatter(compared));
    }
  }

  /** Copies the list; throws when it is empty. */
  public Comparison {
    sheets = List.copyOf(sheets);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a comparison needs a sheet");
    }
  }

  /** One sheet by itself. */
  public static Comparison of(Group reference, Group compared) {
    return new Comparison(List.of(new Sheet(reference, compared)));
  }

  /** The compared shots' centre minus the reference's, over all sheets, in millimetres. */
  public MmVector shift() {
    // Summing from the first sheet leaves a single sheet's shift as it is, to the last digit.
    MmVector first = sheets.get(0).shift();
    double dx = 0;
    double dy = 0;
    double weights = 0;
    for (Sheet sheet : sheets) {
      double weight = sheet.weight();
      MmVector shift = sheet.shift();
      dx += weight * (shift.dx() - first.dx());
      dy += weight * (shift.dy() - first.dy());
      weights += weight;
    }
    return new MmVector(first.dx() + dx / weights, first.dy() + dy / weights);
  }

  /** How many shots in all. */
  public int shots() {
    return sheets.stream().mapToInt(s -> s.reference().size() + s.compared().size()).sum();
  }

  /** Whether there are so few shots that what is assumed of their scatter matters much. */
  public boolean isTiny() {
    return shots() < FEW;
  }

  /** The offset with the region of {@link Hotelling}, which assumes no shape of the scatter. */
  public Offset offset() {
    return new Offset(
        shift(), Hotelling.of(shift(), scatter(), 1 / weight(), freedom()).map(Hotelling::region));
  }

  /**
   * The offset with the region of shots that scatter alike in all directions: a circle whose radius
   * r has r² Σw / 2s² = F(2, 2v; 0.05), with s² the sum of squares about the centres over 2v and v
   * the shots less the centres. Half as many things to estimate make it much smaller with few
   * shots; it is wrong where shots string up or sideways. Elementary: both are ratios of mean
   * squares of a normal sample.
   */
  public Offset roundOffset() {
    if (freedom() < 1 || variance() == 0) {
      return new Offset(shift(), Optional.empty());
    }
    double f = Hotelling.fQuantile(2 * freedom(), 1 - Hotelling.CONFIDENCE);
    double radius = Math.sqrt(2 * variance() * f / weight());
    return new Offset(shift(), Optional.of(new Ellipse(shift(), radius, radius, 0)));
  }

  /**
   * s² in each direction, pooled over all groups, in square millimetres; freedom must be above 0.
   */
  public double variance() {
    Covariance scatter = scatter();
    return (scatter.xx() + scatter.yy()) / (2 * freedom());
  }

  /** Shots less the centres that were estimated from them; each counts in both directions. */
  public int freedom() {
    return sheets.stream().mapToInt(Sheet::freedom).sum();
  }

  /** How much all sheets count together. */
  public double weight() {
    return sheets.stream().mapToDouble(Sheet::weight).sum();
  }

  private Covariance scatter() {
    Covariance all = sheets.get(0).scatter();
    for (Sheet sheet : sheets.subList(1, sheets.size())) {
      all = all.plus(sheet.scatter());
    }
    return all;
  }

  /**
   * How many more shots of each kind would settle whether both hit the same point, if shift and
   * scatter stay as they were found: until the region, as wide as {@link Hotelling}'s is on average
   * with round scatter, lies wholly within the tolerance or wholly beyond it.
   *
   * @param toleranceMm above zero, in millimetres
   * @return from 0; empty when more than {@value #MOST_EACH} would be needed, or the scatter is not
   *     known
   */
  public OptionalInt moreOfEach(double toleranceMm) {
    if (freedom() < 1) {
      return OptionalInt.empty();
    }
    // The sheets with m more shots of each kind count about as one sheet more with m of each does.
    double room = Math.abs(toleranceMm - shift().length());
    return IntStream.rangeClosed(0, MOST_EACH)
        .filter(
            more -> regionRadius(weight() + more / 2.0, freedom() + 2 * more, variance()) <= room)
        .findFirst();
  }

  private static double regionRadius(double weight, int freedom, double variance) {
    if (freedom < 2) {
      return Double.POSITIVE_INFINITY;
    }
    double critical =
        2.0 * freedom / (freedom - 1) * Hotelling.fQuantile(freedom - 1, 1 - Hotelling.CONFIDENCE);
    return Math.sqrt(critical * variance / weight);
  }
}
