package sheaf.core.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.NumberJudge.Numbers;

class NumberJudgeTest {

  private static Numbers judge(Map<String, String> written, double confidence) {
    NumberJudge judge = new NumberJudge(NumberJudge.USUALLY_SURE);
    new TreeMap<>(written)
        .forEach((key, boxes) -> judge.add(Boxes.field(key), Boxes.boxes(boxes, confidence)));
    return judge.judge();
  }

  private static FieldReading reading(Numbers numbers, String key) {
    return numbers.readings().stream().filter(r -> r.key().equals(key)).findFirst().orElseThrow();
  }

  @Test
  void aSureNumberIsReadWithItsUnit() {
    Numbers numbers = judge(Map.of("peak_weight_found", "625"), 0.999);
    FieldReading peak = reading(numbers, "peak_weight_found");
    assertThat(peak.says("62.5")).isTrue();
    assertThat(peak.unit().orElseThrow().symbol()).isEqualTo("lb");
    assertThat(numbers.doubts()).isEmpty();
  }

  @Test
  void emptyBoxesAreABlankAndNoZero() {
    Numbers numbers = judge(Map.of("peak_weight_found", "   "), 0.999);
    assertThat(reading(numbers, "peak_weight_found").state()).isEqualTo(State.BLANK);
    assertThat(numbers.doubts()).isEmpty();
  }

  @Test
  void aStruckOutDigitLeavesTheNumberToAPerson() {
    Numbers numbers = judge(Map.of("peak_weight_found", "6x5"), 0.999);
    FieldReading peak = reading(numbers, "peak_weight_found");
    assertThat(peak.state()).isEqualTo(State.CHECK);
    assertThat(peak.value()).isEmpty();
    assertThat(numbers.doubts()).hasSize(1);
  }

  @Test
  void anUnsureNumberIsToldAndAskedAbout() {
    Numbers numbers = judge(Map.of("peak_weight_found", "625"), 0.98);
    assertThat(reading(numbers, "peak_weight_found").state()).isEqualTo(State.CHECK);
    assertThat(numbers.doubts().get(0).message()).contains("62.5");
  }

  @Test
  void aNumberBeyondWhatIsUsualIsAskedAboutHoweverSure() {
    Numbers numbers = judge(Map.of("draw_length_found", "8906"), 1);
    assertThat(reading(numbers, "draw_length_found").state()).isEqualTo(State.CHECK);
    assertThat(numbers.doubts().get(0).code()).isEqualTo(ReasonCode.NUMBER_IMPLAUSIBLE);
  }

  /** Bow plus loop = draw length - 1 3/4 in + loop: common practice, no published source. */
  @Test
  void drawLengthAndBowPlusLoopBearEachOtherOut() {
    // 29 3/8 - 1 3/4 + 1/2 = 28 1/8
    Map<String, String> together = Map.of("draw_length_left", "2906", "bow_plus_loop_left", "2802");
    Numbers numbers = judge(together, 0.997);
    assertThat(reading(numbers, "draw_length_left").confidence()).isGreaterThan(0.998);
    assertThat(reading(numbers, "draw_length_left").state()).isEqualTo(State.READ);
    Numbers alone = judge(Map.of("draw_length_left", "2906"), 0.997);
    assertThat(reading(alone, "draw_length_left").state()).isEqualTo(State.CHECK);
  }

  @Test
  void whereTheyDoNotGoTogetherBothAreAskedAboutOnce() {
    Numbers numbers = judge(Map.of("draw_length_left", "2906", "bow_plus_loop_left", "2302"), 1);
    assertThat(numbers.readings()).extracting(FieldReading::state).containsOnly(State.CHECK);
    assertThat(numbers.doubts()).hasSize(1);
    assertThat(numbers.doubts().get(0).message()).contains("29 6/16", "23 2/16");
  }

  /**
   * 44 lb at peak and 16 lb held are 63.6 % of let-off, as worked out in an archer's notes on ASTM
   * F1880 of June 2010.
   */
  @Test
  void aUsualLetOffHoldsAndAHoldingWeightAbovePeakDoesNot() {
    assertThat(judge(Map.of("peak_weight_found", "440", "holding_weight_found", "160"), 1).doubts())
        .isEmpty();
    assertThat(judge(Map.of("peak_weight_found", "440", "holding_weight_found", "560"), 1).doubts())
        .hasSize(1);
  }

  /** 400 gr at 280 ft/s are 69.6 ft lbf (exact units), of 60 lb over 21 in at most 105 ft lbf. */
  @Test
  void energyMustComeOutOfTheDraw() {
    Map<String, String> bow =
        Map.of(
            "draw_length_found", "2908",
            "brace_height_found", " 612",
            "peak_weight_found", "600",
            "arrow_mass_found", "400",
            "speed_found", "280");
    assertThat(judge(bow, 1).doubts()).isEmpty();
    Map<String, String> faster = new TreeMap<>(bow);
    faster.put("speed_found", "380");
    assertThat(judge(faster, 1).doubts()).hasSize(1);
  }

  /** B = 18 in and L = 28.5 in, a worked example of the balance of an arrow: 13 % forward. */
  @Test
  void anArrowBalancesInsideItsLength() {
    assertThat(judge(Map.of("arrow_length", "2808", "balance_point", "1800"), 1).doubts())
        .isEmpty();
    assertThat(judge(Map.of("arrow_length", "2808", "balance_point", "2900"), 1).doubts())
        .hasSize(1);
  }
}
