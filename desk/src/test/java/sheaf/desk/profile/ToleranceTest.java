package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;

class ToleranceTest {

  @ParameterizedTest
  @CsvSource({
    "1/16 in, 0.0625, INCH, 1/16 in",
    "2/32in, 0.0625, INCH, 1/16 in",
    "1 1/8 in, 1.125, INCH, 1 1/8 in",
    "2 in, 2, INCH, 2 in",
    "0.1 in, 0.1, INCH, 0.1 in",
    "1.5 mm, 1.5, MILLIMETRE, 1.5 mm",
    " 1 lb , 1, POUND_FORCE, 1 lb",
    "4.5 N, 4.5, NEWTON, 4.5 N",
    "1/4 turn, 0.25, TURN, 0.25 turns",
    "3 fps, 3, FEET_PER_SECOND, 3 ft/s",
    "1 m/s, 1, METRES_PER_SECOND, 1 m/s"
  })
  void isReadAsPeopleWriteIt(String text, double value, Unit unit, String written) {
    assertThat(Tolerance.of(text)).isEqualTo(new Tolerance(value, unit)).hasToString(written);
  }

  @Property
  void everySixtyFourthIsReadAsItIsWritten(@ForAll @IntRange(min = 1, max = 6400) int parts) {
    Tolerance tolerance = new Tolerance(parts / 64.0, Unit.INCH);
    assertThat(Tolerance.of(tolerance.toString())).isEqualTo(tolerance);
  }

  /** International yard and pound agreement of 1959: 1 in = 25.4 mm, 1 ft = 0.3048 m. */
  @Test
  void isToldInOtherUnits() {
    assertThat(Tolerance.of("1/16 in").in(Unit.MILLIMETRE)).isEqualTo(1.5875);
    assertThat(Tolerance.of("3 fps").in(Unit.METRES_PER_SECOND)).isCloseTo(0.9144, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0 mm    | must be above zero
          1/0 in  | has a fraction with nothing under its line
          1 cubit | has a unit that is not known, 'cubit'
          1,5 mm  | must be a number and a unit such as "1/16 in" or "1.5 mm", not '1,5 mm'
          -1 mm   | must be a number and a unit such as "1/16 in" or "1.5 mm", not '-1 mm'
          in      | must be a number and a unit such as "1/16 in" or "1.5 mm", not 'in'
          1e9 mm  | must be a number and a unit such as "1/16 in" or "1.5 mm", not '1e9 mm'
          """)
  void whatIsNoneIsSaid(String text, String complaint) {
    assertThatThrownBy(() -> Tolerance.of(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(complaint);
  }

  /** A measure without a unit, such as a mark on a scale, is the same or it is not. */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyQuantityAskedForAsFoundMayDrift(UnitSystem units) {
    Set<String> found =
        Stream.of(Variant.values())
            .filter(variant -> variant.kind() == SheetKind.BENCH_CARD)
            .flatMap(card -> Layouts.current(card, Paper.LETTER, units).fields().stream())
            .filter(field -> field instanceof Field.Number number && number.unit().isPresent())
            .map(Field::key)
            .filter(key -> key.endsWith("_found"))
            .map(key -> key.replaceAll("_found$", ""))
            .collect(Collectors.toSet());
    assertThat(found).hasSizeGreaterThanOrEqualTo(12);
    assertThat(DriftMeasure.values()).extracting(DriftMeasure::key).containsAll(found);
  }
}
