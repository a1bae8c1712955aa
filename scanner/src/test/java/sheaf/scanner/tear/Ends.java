package sheaf.scanner.tear;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmRect;

/** Ends as the net says them, for tests. */
final class Ends {

  static final Zone ZONE = new Zone(2, new MmRect(0, 0, 90, 80), Optional.empty());

  private Ends() {}

  /** An end that leads to another place and is as likely as said. */
  static EndMap.End at(double x, double y, double toX, double toY, double probability) {
    return new EndMap.End(x, y, 0.5, probability, toX - x, toY - y, 0.02, 0.1);
  }

  /** The pair of a tear of 20 mm. */
  static EndChoice choice(double worth, double margin, double probability) {
    return new EndChoice(
        at(60, 40, 40, 40, probability), at(40, 40, 60, 40, probability), 3, worth, margin);
  }

  /** A tear that the cells place where the net does, but for a tail that is so far off. */
  static FoundTear tear(EndChoice choice, double off) {
    TearFit.End point = new TearFit.End(choice.point().x(), choice.point().y(), 0.3);
    TearFit.End tail = new TearFit.End(choice.tail().x() + off, choice.tail().y(), 0.3);
    return new FoundTear(
        ZONE,
        choice,
        20000,
        new TwoPlaces(choice.point(), point),
        new TwoPlaces(choice.tail(), tail),
        VaneStar.of(List.of(), 0, 20, 3),
        40,
        0,
        Unexplained.NOTHING);
  }
}
