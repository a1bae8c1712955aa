package sheaf.core.group;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sheaf.core.page.MmPoint;

/**
 * Where the middle of a group is, in each direction with its own margin.
 *
 * <p>The margin is that of the mean of a normal sample, t s/√n with n-1 degrees of freedom (NIST/
 * SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2), for each direction by itself, since
 * a sight is moved in one direction after the other and arrows often scatter more in one of them.
 *
 * @param right millimetres to the right
 * @param down millimetres down
 */
public record Centre(Estimate right, Estimate down) {

  /** The centre of a group; without margins for one shot. */
  public static Centre of(Group group) {
    return new Centre(mean(group, MmPoint::x), mean(group, MmPoint::y));
  }

  private static Estimate mean(Group group, ToDoubleFunction<MmPoint> coordinate) {
    int n = group.size();
    double mean = coordinate.applyAsDouble(group.centre());
    if (n < 2) {
      return new Estimate(mean, OptionalDouble.empty());
    }
    double squares = 0;
    for (MmPoint shot : group.shots()) {
      double off = coordinate.applyAsDouble(shot) - mean;
      squares += off * off;
    }
    double error = Math.sqrt(squares / (n - 1) / n);
    return new Estimate(mean, OptionalDouble.of(StudentT.twoSided95(n - 1) * error));
  }
}
