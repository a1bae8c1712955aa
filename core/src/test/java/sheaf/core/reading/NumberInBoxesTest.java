package sheaf.core.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberInBoxesTest {

  private static NumberInBoxes read(String key, String written) {
    return NumberInBoxes.of(Boxes.field(key), Boxes.boxes(written, 1)).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "draw_length_found, '2906', 29 6/16, 29.375",
    "draw_length_found, '29 6', 29 6/16, 29.375",
    "draw_length_found, '29  ', 29, 29",
    "brace_height_left, ' 610', 6 10/16, 6.625",
    "nocking_height_left, ' 03', 3/16, 0.1875",
    "nocking_height_left, '000', 0 0/16, 0",
    "peak_weight_found, '625', 62.5, 62.5",
    "peak_weight_found, '62 ', 62, 62",
    "limb_bolt_turns_left, '150', 1.50, 1.5",
    "limb_bolt_turns_left, ' 25', 0.25, 0.25",
    "arrow_mass_found, '420', 420, 420",
    "peep_size_found, ' 5', 5/32, 0.15625",
    "shaft_diameter, '246', 0.246, 0.246"
  })
  void whatIsWrittenBoxByBoxIsOneNumber(String key, String written, String text, double value) {
    NumberInBoxes number = read(key, written);
    assertThat(number.text()).isEqualTo(text);
    assertThat(number.value()).isCloseTo(value, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 06", "2916", "296 ", "2999"})
  void aGapOrMoreThanFifteenSixteenthsLeavesOpenWhichNumberIsMeant(String written) {
    assertThat(NumberInBoxes.of(Boxes.field("draw_length_found"), Boxes.boxes(written, 1)))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"6 5", "6  "})
  void unitsLeftEmptyBehindTensAreAGap(String written) {
    assertThat(NumberInBoxes.of(Boxes.field("peak_weight_found"), Boxes.boxes(written, 1)))
        .isEmpty();
  }

  @Test
  void hundredthsWithoutTenthsAreAGap() {
    assertThat(NumberInBoxes.of(Boxes.field("limb_bolt_turns_left"), Boxes.boxes("1 5", 1)))
        .isEmpty();
  }

  @Property
  void everySixteenthOfAnInchReadsAsItself(@ForAll @IntRange(min = 0, max = 1599) int sixteenths) {
    String written = "%02d%02d".formatted(sixteenths / 16, sixteenths % 16);
    assertThat(read("axle_to_axle_left", written).value()).isEqualTo(sixteenths / 16.0);
  }

  @Property
  void aNumberIsAsSureAsAllItsDigitsTogether(@ForAll @IntRange(min = 500, max = 1000) int sure) {
    double each = sure / 1000.0;
    assertThat(
            NumberInBoxes.of(Boxes.field("peak_weight_found"), Boxes.boxes("625", each))
                .orElseThrow()
                .confidence())
        .isCloseTo(each * each * each, within(1e-12));
  }
}
