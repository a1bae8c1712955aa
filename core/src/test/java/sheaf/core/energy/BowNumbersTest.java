package sheaf.core.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sheaf.core.flight.Air;
import sheaf.core.flight.BowFlight;
import sheaf.core.job.JobId;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.record.Bow;
import sheaf.core.record.BowRecord;
import sheaf.core.record.How;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Trait;
import sheaf.core.record.Visit;

class BowNumbersTest {

  private final List<Measure> measures = new ArrayList<>();
  private final List<Trait> traits = new ArrayList<>();

  private BowNumbersTest left(String key, double value, Unit unit) {
    Taken taken = Taken.number(String.valueOf(value), value, unit, How.READ);
    measures.add(new Measure(key, key, Optional.empty(), Optional.of(taken)));
    return this;
  }

  private BowNumbersTest trait(String key, double value, Unit unit) {
    traits.add(new Trait(key, key, Taken.number(String.valueOf(value), value, unit, How.READ)));
    return this;
  }

  private BowRecord record() {
    Visit visit =
        new Visit(
            JobId.random(new SplittableRandom(1)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            measures,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new BowRecord(new Bow(Optional.empty(), traits), List.of(visit));
  }

  private BowNumbers numbers() {
    return BowNumbers.of(record(), Pulls.NONE);
  }

  private static double value(BowNumbers numbers, String key) {
    return numbers.figures().stream()
        .filter(figure -> figure.key().equals(key))
        .findFirst()
        .orElseThrow()
        .value();
  }

  private void inches() {
    left("arrow_mass", 400, Unit.GRAIN).left("speed", 280, Unit.FEET_PER_SECOND);
    left("peak_weight", 60, Unit.POUND_FORCE).left("holding_weight", 12, Unit.POUND_FORCE);
    left("draw_length", 29, Unit.INCH).left("brace_height", 6.5, Unit.INCH);
    trait("arrow_length", 28.5, Unit.INCH).trait("balance_point", 18, Unit.INCH);
    trait("shaft_diameter", 0.25, Unit.INCH);
  }

  private void metric() {
    left("arrow_mass", 400 * 0.06479891, Unit.GRAM).left("speed", 85.344, Unit.METRES_PER_SECOND);
    left("peak_weight", 266.893296915756, Unit.NEWTON);
    left("holding_weight", 53.3786593831512, Unit.NEWTON);
    left("draw_length", 736.6, Unit.MILLIMETRE).left("brace_height", 165.1, Unit.MILLIMETRE);
    trait("arrow_length", 723.9, Unit.MILLIMETRE).trait("balance_point", 457.2, Unit.MILLIMETRE);
    trait("shaft_diameter", 6.35, Unit.MILLIMETRE);
  }

  @Test
  void areAllThereFromABenchCard() {
    inches();
    BowNumbers numbers = numbers();
    assertThat(numbers.figures())
        .extracting(Figure::key)
        .contains(
            "kinetic_energy",
            "momentum",
            "grains_per_pound",
            "let_off",
            "front_of_centre",
            "rated_speed_low");
    assertThat(value(numbers, "kinetic_energy")).isCloseTo(69.621, within(0.001));
    assertThat(value(numbers, "let_off")).isCloseTo(80, within(1e-9));
    assertThat(value(numbers, "front_of_centre")).isCloseTo(13.158, within(0.001));
    assertThat(numbers.cautions()).isEmpty();
  }

  /** A constant 60 lb over 20 3/4 in stores 103.75 ft lbf; the arrow carries 69.6 of them. */
  @Test
  void tellWhatTheBowStoresAndHowMuchOfItTheArrowCarries() {
    inches();
    BowNumbers numbers = BowNumbers.of(record(), constant(60, 20.75));
    assertThat(value(numbers, "stored_energy")).isCloseTo(103.75, within(1e-9));
    assertThat(value(numbers, "efficiency")).isCloseTo(67.1, within(0.05));
    assertThat(numbers.cautions()).isEmpty();
  }

  @Test
  void thatDisagreeWithThePullsAreSaid() {
    inches();
    assertThat(BowNumbers.of(record(), constant(66, 20.75)).cautions())
        .singleElement()
        .asString()
        .contains("highest pull is 66.0 lb", "peak weight 60.0 lb");
    assertThat(BowNumbers.of(record(), constant(60, 24)).cautions())
        .singleElement()
        .asString()
        .contains("end 24.0 in from rest", "make it 20.8 in");
  }

  private static Pulls constant(double pounds, double inches) {
    return Pulls.of(
        new DrawCurve(List.of(new DrawCurve.Pull(0, pounds), new DrawCurve.Pull(inches, pounds))));
  }

  @Test
  void areTheSameInInchesAndMetric() {
    inches();
    List<String> printed = printed();
    measures.clear();
    traits.clear();
    metric();
    assertThat(printed()).isEqualTo(printed);
  }

  /** Every number of bow and flight, as it is printed. */
  private List<String> printed() {
    Distance set = new Distance(20, Unit.YARD);
    BowFlight.Aim aim = new BowFlight.Aim(114.3, set, Air.STANDARD, OptionalDouble.empty());
    List<Distance> distances = List.of(set, new Distance(40, Unit.YARD));
    BowFlight flight = BowFlight.of(record(), aim, distances).orElseThrow();
    Stream<String> figures =
        numbers().figures().stream()
            .map(f -> f.key() + String.format(" %." + f.decimals() + "f", f.value()));
    Stream<String> rows =
        flight.rows().stream()
            .map(r -> String.format("%.1f %.1f %.3f", r.heightMm(), r.dropMm(), r.seconds()));
    return Stream.concat(figures, rows).toList();
  }

  @Test
  void ofTooLightAnArrowAreCautioned() {
    left("arrow_mass", 280, Unit.GRAIN).left("peak_weight", 60, Unit.POUND_FORCE);
    assertThat(numbers().cautions()).singleElement().asString().contains("dry fire");
  }

  @Test
  void thatCannotBeAreSaidAndLeftOut() {
    left("peak_weight", 60, Unit.POUND_FORCE).left("holding_weight", 70, Unit.POUND_FORCE);
    assertThat(numbers().figures()).isEmpty();
    assertThat(numbers().cautions()).singleElement().asString().contains("holds at most its peak");
  }

  @Test
  void ofABlankCardAreNone() {
    assertThat(numbers().figures()).isEmpty();
    assertThat(numbers().cautions()).isEmpty();
  }

  @Test
  void aSpeedThatNoBowShootsGivesNoFlight() {
    left("arrow_mass", 400, Unit.GRAIN).left("speed", 3, Unit.FEET_PER_SECOND);
    trait("shaft_diameter", 0.25, Unit.INCH);
    Distance set = new Distance(20, Unit.YARD);
    BowFlight.Aim aim = new BowFlight.Aim(114.3, set, Air.STANDARD, OptionalDouble.empty());
    assertThat(BowFlight.of(record(), aim, List.of(set))).isEmpty();
  }
}
