package sheaf.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.measure.Unit;

class DriftedTest {

  private static final Map<String, Drifted.Tolerance> TOLERANCES =
      Map.of(
          "brace_height", new Drifted.Tolerance(1 / 16.0, Unit.INCH),
          "axle_to_axle", new Drifted.Tolerance(1 / 16.0, Unit.INCH),
          "peep_height", new Drifted.Tolerance(1 / 16.0, Unit.INCH));

  private static Visit visit(Measure... measures) {
    return new Visit(
        JobId.random(new SplittableRandom(1)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Arrays.asList(measures),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Optional<Taken> inches(double value) {
    return Optional.of(Taken.number(String.valueOf(value), value, Unit.INCH, How.READ));
  }

  private static Measure left(String key, double inches) {
    return new Measure(key, key, Optional.empty(), inches(inches));
  }

  private static Measure found(String key, Optional<Taken> taken) {
    return new Measure(key, key, taken, Optional.empty());
  }

  private static List<String> keys(List<Drifted> drifted) {
    return drifted.stream().map(Drifted::key).toList();
  }

  @Test
  void whatMovedIsToldInTheOrderOfRestoring() {
    Visit earlier =
        visit(left("peep_height", 5), left("brace_height", 6.5), left("axle_to_axle", 32));
    Visit later =
        visit(
            found("peep_height", inches(5.25)),
            found("brace_height", inches(6.25)),
            found("axle_to_axle", inches(32.25)));
    List<Drifted> drifted = Drifted.between(earlier, later, TOLERANCES);
    assertThat(keys(drifted)).containsExactly("axle_to_axle", "brace_height", "peep_height");
    assertThat(drifted.get(1).change()).isEqualTo(-0.25);
  }

  @Test
  void whatMovedByExactlyTheToleranceIsNotTold() {
    Visit earlier = visit(left("brace_height", 6.5));
    assertThat(Drifted.between(earlier, visit(found("brace_height", inches(6.5625))), TOLERANCES))
        .isEmpty();
    assertThat(Drifted.between(earlier, visit(found("brace_height", inches(6.625))), TOLERANCES))
        .hasSize(1);
  }

  @Test
  void inchesAndMillimetresAreComparedAsOneLength() {
    Visit earlier = visit(left("brace_height", 6.5));
    Taken same = Taken.number("165.1", 165.1, Unit.MILLIMETRE, How.READ);
    Taken less = Taken.number("158.8", 158.8, Unit.MILLIMETRE, How.READ);
    assertThat(
            Drifted.between(earlier, visit(found("brace_height", Optional.of(same))), TOLERANCES))
        .isEmpty();
    assertThat(
            Drifted.between(earlier, visit(found("brace_height", Optional.of(less))), TOLERANCES)
                .get(0)
                .change())
        .isCloseTo(-0.248, within(0.001));
  }

  @Test
  void whatIsBlankOrDoubtfulIsNoDrift() {
    Visit earlier = visit(left("brace_height", 6.5), left("axle_to_axle", 32));
    Taken doubtful = Taken.number("9", 9, Unit.INCH, How.DOUBTFUL);
    Visit later =
        visit(
            found("brace_height", Optional.empty()), found("axle_to_axle", Optional.of(doubtful)));
    assertThat(Drifted.between(earlier, later, TOLERANCES)).isEmpty();
  }

  @Test
  void anotherWordIsADrift() {
    Visit earlier =
        visit(
            new Measure(
                "cam_stops",
                "Cam stops",
                Optional.of(Taken.word("both", How.READ)),
                Optional.empty()));
    Visit later = visit(found("cam_stops", Optional.of(Taken.word("top", How.READ))));
    assertThat(keys(Drifted.between(earlier, later, Map.of()))).containsExactly("cam_stops");
  }
}
