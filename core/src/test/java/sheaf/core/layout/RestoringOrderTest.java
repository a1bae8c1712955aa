package sheaf.core.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheaf.core.page.Paper;

/** Common practice, no published source. */
class RestoringOrderTest {

  @Test
  void goesFromStringsAndGeometryOverTimingDrawRestAndPeepToTheSight() {
    List<String> order =
        List.of(
            "string_length",
            "cable_length",
            "axle_to_axle",
            "brace_height",
            "cam_stops",
            "draw_length",
            "centre_shot",
            "rest_drop",
            "peep_height",
            "sight_scale");
    assertThat(order.stream().map(RestoringOrder::place)).isSorted().doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource
  void numbersEveryRowOfAReturnCardOnceOverFrontAndBack(BowType bow) {
    Map<String, Integer> numbers = RestoringOrder.numbers(bow, UnitSystem.INCHES);
    assertThat(numbers.values())
        .containsExactlyElementsOf(IntStream.rangeClosed(1, numbers.size()).boxed().toList());
    assertThat(numbers).containsKeys("brace_height", "limb_bolt_turns", "speed");
  }

  @Test
  void standsOnReturnCardsSinceTheirSecondVersion() {
    assertThat(printed(Layouts.current(Variant.RETURN_FRONT, Paper.LETTER, UnitSystem.INCHES)))
        .containsSubsequence(
            "1  Axle to axle", "2  Brace height", "6  Cam stops", "8  Draw length (ATA)");
    LayoutId first = new LayoutId(Variant.RETURN_FRONT, Paper.LETTER, UnitSystem.INCHES, 1);
    assertThat(printed(Layouts.find(first).orElseThrow()))
        .containsSubsequence("Draw length (ATA)", "Axle to axle", "Cam stops");
  }

  private static List<String> printed(Layout layout) {
    return layout.ink().stream()
        .filter(Ink.Label.class::isInstance)
        .map(ink -> ((Ink.Label) ink).text())
        .toList();
  }
}
