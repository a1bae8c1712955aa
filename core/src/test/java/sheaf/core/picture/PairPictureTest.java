package sheaf.core.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Shape.Tone;
import sheaf.core.reading.Head;
import sheaf.core.result.PairResult;
import sheaf.core.result.Readings;
import sheaf.core.result.Verdict;

class PairPictureTest {

  private static final MmRect FRAME = new MmRect(10, 20, 72, 68);

  private final PairResult pair =
      PairResult.of(
          Readings.pair(2)
              .at(20, Unit.YARD)
              .shot(Head.FIELD, 0, 0)
              .shot(Head.FIELD, 20, 0)
              .shot(Head.FIELD, 0, 10)
              .shot(Head.BROADHEAD, 40, 40)
              .shot(Head.BROADHEAD, 44, 40)
              .shot(Head.BROADHEAD, 40, 44)
              .read());
  private final Picture picture = PairPicture.of(pair, FRAME);

  private List<MmPoint> fieldHoles() {
    return shapes(picture.shapes().stream())
        .filter(Shape.Disc.class::isInstance)
        .map(Shape.Disc.class::cast)
        .filter(disc -> disc.tone() == Tone.HOLE)
        .map(Shape.Disc::centre)
        .toList();
  }

  private static Stream<Shape> shapes(Stream<Shape> all) {
    return all.flatMap(
        shape ->
            shape instanceof Shape.Inside inside
                ? shapes(inside.shapes().stream())
                : Stream.of(shape));
  }

  @Test
  void everyHoleStandsInTheFrameAtOneScale() {
    List<MmPoint> holes = fieldHoles();

    assertThat(holes).hasSize(3).allMatch(FRAME::contains);
    double across = holes.get(1).x() - holes.get(0).x();
    double down = holes.get(2).y() - holes.get(0).y();
    assertThat(across).isEqualTo(2 * down, within(1e-9)).isPositive();
  }

  @Test
  void regionIsCutOffAtTheFrame() {
    assertThat(picture.shapes())
        .first()
        .isInstanceOfSatisfying(
            Shape.Inside.class, inside -> assertThat(inside.rect()).isEqualTo(FRAME));
  }

  @Test
  void wordsSayWhatIsToBeSeen() {
    assertThat(picture.words()).contains("3 field points and 3 broadheads", Verdict.of(pair));
  }
}
