package sheaf.core.group;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * The shots of one group, where their shafts' axes went through the target.
 *
 * @param shots at least one, in true millimetres on the target; the order means nothing to any
 *     statistic here
 */
public record Group(List<MmPoint> shots) {

  /** Copies the list; throws when it is empty. */
  public Group {
    shots = List.copyOf(shots);
    if (shots.isEmpty()) {
      throw new IllegalArgumentException("a group needs at least one shot");
    }
  }

  /** How many shots, one or more. */
  public int size() {
    return shots.size();
  }

  /** The mean of the shots; the shot itself when there is one. */
  public MmPoint centre() {
    // Summing from the first shot keeps the digits that matter when a group lies far from zero.
    MmPoint first = shots.get(0);
    double dx = 0;
    double dy = 0;
    for (MmPoint shot : shots) {
      MmVector fromFirst = shot.minus(first);
      dx += fromFirst.dx();
      dy += fromFirst.dy();
    }
    return first.plus(new MmVector(dx / size(), dy / size()));
  }

  /** The greatest distance between two shots' centres, in millimetres; 0 for one shot. */
  public double extremeSpread() {
    double greatest = 0;
    for (int i = 1; i < size(); i++) {
      for (int j = 0; j < i; j++) {
        greatest = Math.max(greatest, shots.get(i).distanceTo(shots.get(j)));
      }
    }
    return greatest;
  }

  /** The mean distance of the shots from their own centre, in millimetres; 0 for one shot. */
  public double meanRadius() {
    MmPoint centre = centre();
    return shots.stream().mapToDouble(centre::distanceTo).sum() / size();
  }
}
