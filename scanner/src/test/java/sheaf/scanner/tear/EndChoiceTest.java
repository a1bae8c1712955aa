package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class EndChoiceTest {

  private static final EndMap.End LEFT = Ends.at(20, 40, 50, 40, 0.5);
  private static final EndMap.End RIGHT = Ends.at(50, 40, 20, 40, 0.5);
  private static final EndMap.End BESIDE_RIGHT = Ends.at(51, 41, 20, 40, 0.5);

  private static EndChoice pair(EndMap.End tail, EndMap.End point, double worth) {
    return new EndChoice(tail, point, 3, worth, 0);
  }

  @Test
  void vanesSlitsDecideWhichEndTheTailMade() {
    List<EndChoice> pairs = List.of(pair(LEFT, RIGHT, 30), pair(RIGHT, LEFT, 30));
    EndChoice best =
        EndChoice.best(pairs, tear -> tear.tailX() > tear.pointX() ? 25 : -25).orElseThrow();
    assertThat(best.tail()).isEqualTo(RIGHT);
    assertThat(best.margin()).isGreaterThan(5);
  }

  @Test
  void twoWaysRoundThatAreAsLikelyLeaveNoMargin() {
    List<EndChoice> pairs = List.of(pair(LEFT, RIGHT, 30), pair(RIGHT, LEFT, 30));
    assertThat(EndChoice.best(pairs, tear -> 0).orElseThrow().margin()).isZero();
  }

  @Test
  void aPairOfNearlyTheSameEndsIsNoRival() {
    List<EndChoice> pairs =
        List.of(pair(RIGHT, LEFT, 30), pair(BESIDE_RIGHT, LEFT, 29.9), pair(LEFT, RIGHT, 22));
    assertThat(EndChoice.best(pairs, tear -> 0).orElseThrow().margin()).isEqualTo(8, within(1e-9));
  }

  @Test
  void whereNoEndWasSeenNothingIsChosen() {
    assertThat(EndChoice.best(List.of(), tear -> 0)).isEmpty();
  }
}
