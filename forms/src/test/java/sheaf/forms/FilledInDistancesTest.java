package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;

/** Distances that a shop always shoots at, printed into the boxes of an open line sheet. */
class FilledInDistancesTest {

  private static final List<Integer> NUMBERS = List.of(3, 10, 25, 99, 100, 407, 999);

  @ParameterizedTest
  @EnumSource
  void everyDigitStandsInItsBoxAndNoZeroBeforeTheFirst(Paper paper) throws IOException {
    Layout layout = Layouts.current(Variant.OPEN_DISTANCES, paper, UnitSystem.INCHES);
    List<Pdf.Letter> letters = print(layout, distances()).letters(0);
    List<Field.Number> bands = bands(layout);

    assertThat(bands).hasSizeGreaterThanOrEqualTo(5);
    for (int i = 0; i < bands.size(); i++) {
      List<Field.Digit> boxes = bands.get(i).digits();
      String padded = "%3d".formatted(NUMBERS.get(i));
      List<String> printed = boxes.stream().map(box -> inside(box, letters)).toList();

      assertThat(printed)
          .containsExactlyElementsOf(
              IntStream.range(0, 3).mapToObj(at -> padded.substring(at, at + 1).strip()).toList());
    }
  }

  @Test
  void withoutDistancesTheBoxesAreEmpty() throws IOException {
    Layout layout = Layouts.current(Variant.OPEN_DISTANCES, Paper.A4, UnitSystem.METRIC);
    List<Pdf.Letter> letters = print(layout, SheetValues.NONE).letters(0);

    assertThat(bands(layout).stream().flatMap(band -> band.digits().stream()))
        .allMatch(box -> inside(box, letters).isEmpty());
  }

  @Test
  void aNumberWithMoreDigitsThanBoxesIsRefused() {
    Layout layout = Layouts.current(Variant.OPEN_DISTANCES, Paper.A4, UnitSystem.METRIC);

    assertThatThrownBy(() -> print(layout, new SheetValues(Map.of(), Map.of("distance_1", 1000))))
        .hasMessageContaining("1000 has more digits than distance of band 1");
  }

  private static SheetValues distances() {
    return SheetValues.NONE.withDistances(
        NUMBERS.stream().map(number -> new Distance(number, Unit.YARD)).toList());
  }

  private static List<Field.Number> bands(Layout layout) {
    List<Field.Number> bands = new ArrayList<>();
    for (Field field : layout.fields()) {
      if (field instanceof Field.Number number && number.key().startsWith("distance_")) {
        bands.add(number);
      }
    }
    return bands;
  }

  /** What is printed in a box, wholly and with white around it. */
  private static String inside(Field.Digit digit, List<Pdf.Letter> letters) {
    StringBuilder text = new StringBuilder();
    letters.stream()
        .filter(letter -> letter.box().overlaps(digit.box()))
        .forEach(
            letter -> {
              // A letter's box is as high as the typeface's line, not as its ink.
              assertThat(digit.box().grow(-0.2).contains(letter.box())).isTrue();
              text.append(letter.text());
            });
    return text.toString();
  }

  private static Pdf print(Layout layout, SheetValues values) {
    SheetCode code = new SheetCode(Jobs.JOB, 3, layout.id());
    return Pdf.of(out -> BlankSheets.write(List.of(code), Sides.ONE, values, out));
  }
}
