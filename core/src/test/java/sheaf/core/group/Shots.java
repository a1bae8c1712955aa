package sheaf.core.group;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sheaf.core.page.MmPoint;

/** Groups for tests. */
final class Shots {

  private Shots() {}

  /** A group from x, y, x, y... */
  static Group at(double... coordinates) {
    List<MmPoint> shots = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      shots.add(new MmPoint(coordinates[i], coordinates[i + 1]));
    }
    return new Group(shots);
  }

  /** Normal shots around a centre, wider across than down, the two coordinates correlated. */
  static Group slanted(Random random, int size, double centreX, double centreY) {
    double[] coordinates = new double[2 * size];
    for (int i = 0; i < coordinates.length; i += 2) {
      double common = random.nextGaussian();
      coordinates[i] = centreX + 20 * common;
      coordinates[i + 1] = centreY + 5 * common + 10 * random.nextGaussian();
    }
    return at(coordinates);
  }

  /** Normal shots of standard deviation 1 in every direction around zero. */
  static Group round(Random random, int size) {
    double[] coordinates = new double[2 * size];
    for (int i = 0; i < coordinates.length; i++) {
      coordinates[i] = random.nextGaussian();
    }
    return at(coordinates);
  }
}
