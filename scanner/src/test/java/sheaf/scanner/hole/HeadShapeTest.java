package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.Head;

/** Lines are given as angle in degrees and length beyond the circle in millimetres. */
class HeadShapeTest {

  private static final Circle HOLE = new Circle(200, 200, 30);

  @Test
  void twoOppositeSlitsAreABroadheads() {
    HeadShape shape = shape(line(10, 11), line(188, 10.5), line(95, 2));

    assertThat(shape).isEqualTo(new HeadShape(10.5, 11));
    assertThat(shape.head()).isEqualTo(Head.BROADHEAD);
  }

  @Test
  void threeEvenSlitsAreABroadheads() {
    assertThat(shape(line(0, 9), line(123, 8.5), line(239, 9.5)).head()).isEqualTo(Head.BROADHEAD);
  }

  @Test
  void oneSlitThatWasMissedDoesNotMakeAFieldPoint() {
    assertThat(shape(line(0, 9), line(121, 8.5)).head()).isEqualTo(Head.BROADHEAD);
  }

  @Test
  void oneLongLineMayBeANeighboursSlitSoItLeavesTheHeadOpen() {
    assertThat(shape(line(0, 18), line(178, 2.5), line(80, 3)).head()).isEqualTo(Head.UNKNOWN);
  }

  @Test
  void shortTearsAreAFieldPoints() {
    assertThat(shape(line(0, 4), line(72, 2), line(178, 3), line(290, 2)).head())
        .isEqualTo(Head.FIELD);
  }

  @Test
  void aHoleWithoutLinesIsAFieldPoints() {
    assertThat(shape().head()).isEqualTo(Head.FIELD);
  }

  @Test
  void linesBetweenTearsAndSlitsInLengthLeaveTheHeadOpen() {
    assertThat(shape(line(0, 4.4), line(180, 4.4)).head()).isEqualTo(Head.UNKNOWN);
  }

  private static HeadShape shape(Slit... lines) {
    return HeadShape.of(HOLE, List.copyOf(Arrays.asList(lines)));
  }

  private static Slit line(double degrees, double beyond) {
    return new Slit(Math.toRadians(degrees), HOLE.radius() + 10 * beyond, 1);
  }
}
