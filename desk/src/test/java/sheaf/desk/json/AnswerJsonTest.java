package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Said;
import sheaf.core.layout.Aim;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class AnswerJsonTest {

  private static final MmPoint HERE = new MmPoint(60.25, 90.5);
  private static final MmPoint THERE = new MmPoint(62, 91);

  static Stream<Said> everythingThatCanBeSaid() {
    return Stream.of(
        new Said.Value(
            "brace_height_left",
            "6 1/2",
            OptionalDouble.of(6.5),
            Optional.of(Unit.INCH),
            Teller.TYPED,
            "6 7/16 in"),
        new Said.Value(
            "hand", "", OptionalDouble.empty(), Optional.empty(), Teller.LOOKED, "right"),
        new Said.HoleAt(HERE, THERE, Head.BROADHEAD, Aim.SHARED),
        new Said.NoHole(HERE),
        new Said.TearAt(3, HERE, THERE),
        new Said.NoTear(2),
        new Said.AsRead(Reason.at(ReasonCode.HOLE_UNSURE, "Is this a hole?", HERE)),
        new Said.AsRead(Reason.of(ReasonCode.CURLED, "It is curled.")));
  }

  private static Answer answer(Said said) {
    return new Answer(
        OptionalInt.of(4),
        said,
        Optional.of("T.S."),
        Instant.parse("2026-09-14T16:30:00Z"),
        Optional.empty());
  }

  @ParameterizedTest
  @MethodSource("everythingThatCanBeSaid")
  void whatIsWrittenIsReadBack(Said said) {
    String line = AnswerJson.line(answer(said));
    assertThat(line).doesNotContain("\n");
    assertThat(AnswerJson.parse(line)).isEqualTo(answer(said));
  }

  @Test
  void whatIsUnknownIsNamed() {
    String line = AnswerJson.line(answer(new Said.NoTear(2))).replace("no_tear", "song");
    assertThatThrownBy(() -> AnswerJson.parse(line)).hasMessageContaining("song");
  }
}
