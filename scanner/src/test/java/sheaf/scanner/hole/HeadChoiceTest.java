package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.Head;

/**
 * Three of six holes around a shared dot are broadheads'. Slits are given as angle in degrees and
 * length from the axis in millimetres; shafts are 6 mm thick.
 */
class HeadChoiceTest {

  private final List<FoundHole> holes = new ArrayList<>();

  @Test
  void bladesThatReachEquallyFarAreBroadheads() {
    FoundHole one = hole(slit(0, 17), slit(180, 17));
    FoundHole two = hole(slit(40, 16.8), slit(220, 16.5));
    FoundHole three = hole(slit(100, 17), slit(281, 16.9));
    threeFieldPoints();

    assertThat(chosen()).contains(Set.of(one, two, three));
  }

  @Test
  void aPenThroughAFieldPointsHoleIsNotTakenForABroadhead() {
    hole(slit(0, 13), slit(180, 13));
    hole(slit(40, 12.8), slit(220, 12.5));
    FoundHole lostOneOfItsSlits = hole(slit(100, 12.9), slit(10, 4));
    threeFieldPoints(slit(60, 26), slit(240, 8));

    assertThat(chosen().filter(told -> !told.contains(lostOneOfItsSlits))).isEmpty();
  }

  @Test
  void theDotTellsWhatNoSlitDoes() {
    FoundHole one = hole(slit(0, 13), slit(180, 13));
    FoundHole two = hole(slit(40, 12.8), slit(220, 12.5));
    FoundHole hidden = hole();
    threeFieldPoints();

    List<Head> shot =
        List.of(Head.BROADHEAD, Head.BROADHEAD, Head.BROADHEAD, Head.FIELD, Head.FIELD, Head.FIELD);
    Map<FoundHole, Head> dots = new HashMap<>();
    for (int i = 0; i < holes.size(); i++) {
      dots.put(holes.get(i), shot.get(i));
    }

    Optional<Set<FoundHole>> told = HeadChoice.of(holes, dots, 3);

    assertThat(told).contains(Set.of(one, two, hidden));
  }

  @Test
  void withoutASlitNothingIsChosen() {
    hole(slit(0, 13), slit(180, 13));
    hole(slit(40, 12.8), slit(220, 12.5));
    hole();
    threeFieldPoints();

    assertThat(chosen()).isEmpty();
  }

  private Optional<Set<FoundHole>> chosen() {
    return HeadChoice.of(holes, Map.of(), 3);
  }

  private void threeFieldPoints(Slit... throughTheFirst) {
    hole(throughTheFirst);
    hole(slit(70, 4.6));
    hole(slit(200, 4.8), slit(320, 4.5));
  }

  private FoundHole hole(Slit... slits) {
    Circle circle = new Circle(400 + 700 * holes.size(), 200, 30);
    List<Slit> lines = Arrays.asList(slits);
    FoundHole hole = new FoundHole(circle, 2, 1, HeadShape.of(circle, lines), lines);
    holes.add(hole);
    return hole;
  }

  private static Slit slit(double degrees, double length) {
    return new Slit(Math.toRadians(degrees), 10 * length, 1);
  }
}
