package sheaf.core.group;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmPoint;

/**
 * A shot that does not seem to belong to its group: named, never dropped.
 *
 * <p>With the other m shots scattering about their centre with the sum of squared distances Q, a
 * shot d away from that centre gives F = (m-1) d² / (Q (1 + 1/m)), which follows F(2, 2(m-1)) when
 * all come from one round bell-shaped scatter; the probability of at least that much is (1 +
 * F/(m-1))^-(m-1). The shot farthest out is named when that probability is below 5 % divided by the
 * number of shots (Bonferroni), so that of groups without any flyer at most one in twenty has one
 * named.
 *
 * <p>Source: the externally studentized residual, in any textbook of outliers, for instance V.
 * Barnett and T. Lewis, Outliers in Statistical Data; here for two coordinates at once.
 *
 * @param shot where it hit, in millimetres
 * @param others the group without it
 */
public record Flyer(MmPoint shot, Group others) {

  private static final double NAMED_WITHOUT_CAUSE = 0.05;

  /** Fewer shots have no scatter of their own once one is left out. */
  private static final int FEWEST = 3;

  /** The flyer of a group, if there is one. */
  public static Optional<Flyer> of(Group group) {
    if (group.size() < FEWEST) {
      return Optional.empty();
    }
    Flyer farthest = null;
    double least = NAMED_WITHOUT_CAUSE / group.size();
    for (int i = 0; i < group.size(); i++) {
      List<MmPoint> others = new ArrayList<>(group.shots());
      Flyer flyer = new Flyer(others.remove(i), new Group(others));
      double probability = flyer.probability();
      if (probability < least) {
        least = probability;
        farthest = flyer;
      }
    }
    return Optional.ofNullable(farthest);
  }

  /** How probable a shot at least so far out is. */
  private double probability() {
    Covariance scatter = Covariance.scatter(others);
    double squares = scatter.xx() + scatter.yy();
    double away = shot.distanceTo(others.centre());
    if (squares == 0) {
      return away == 0 ? 1 : 0;
    }
    int m = others.size();
    double ratio = away * away / (squares * (1 + 1.0 / m));
    return Math.exp(-(m - 1) * Math.log1p(ratio));
  }
}
