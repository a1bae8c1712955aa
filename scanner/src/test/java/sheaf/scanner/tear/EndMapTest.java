package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class EndMapTest {

  private static final int COLUMNS = 20;
  private static final int ROWS = 10;

  private final float[] planes = new float[EndNet.PLANES * COLUMNS * ROWS];

  EndMapTest() {
    Arrays.fill(planes, 0, 2 * COLUMNS * ROWS, -6);
  }

  private void say(int plane, int column, int row, double value) {
    planes[(plane * ROWS + row) * COLUMNS + column] = (float) value;
  }

  private List<EndMap.End> ends(EndMap.Sort sort) {
    return new EndMap(100, 50, COLUMNS, ROWS, planes).ends(sort);
  }

  @Test
  void aSheetWithoutTearsHasNoEnds() {
    assertThat(ends(EndMap.Sort.TAIL)).isEmpty();
    assertThat(ends(EndMap.Sort.POINT)).isEmpty();
  }

  @Test
  void anEndLiesWhereItsCellSays() {
    say(0, 4, 3, 8);
    say(2, 4, 3, 0.7);
    say(3, 4, 3, -0.4);
    EndMap.End tail = ends(EndMap.Sort.TAIL).get(0);
    assertThat(tail.x()).isEqualTo(100 + 9 + 0.7, within(0.01));
    assertThat(tail.y()).isEqualTo(50 + 7 - 0.4, within(0.01));
    assertThat(tail.probability()).isGreaterThan(0.9);
  }

  @Test
  void theLikelierOfTwoEndsComesFirst() {
    say(1, 15, 5, 5);
    say(1, 3, 5, 7);
    assertThat(ends(EndMap.Sort.POINT))
        .extracting(EndMap.End::x)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 0.1 ? 0 : Double.compare(a, b))
        .containsExactly(107.0, 131.0);
  }

  @Test
  void aFaintPointIsFoundWhereATailLeads() {
    say(0, 8, 4, 8);
    say(8, 8, 4, 0.4);
    say(1, 10, 4, 1.5);
    say(1, 11, 4, 1.6);
    say(1, 12, 4, 8);
    assertThat(ends(EndMap.Sort.POINT)).hasSizeGreaterThanOrEqualTo(2);
  }
}
