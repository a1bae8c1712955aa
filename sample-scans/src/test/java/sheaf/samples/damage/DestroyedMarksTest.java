package sheaf.samples.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.ReasonCode;

/** Register marks and codes are shot away, torn out, inked over and cut off. */
@Tag("slow")
class DestroyedMarksTest {

  private static final CleanScan PAIR = CleanScan.shot(Variant.TWO_DOTS, 5);
  private static final CleanScan CARD = CleanScan.ticked(6);

  static Stream<Arguments> oneMark() {
    return Stream.of(Harm.values())
        .flatMap(harm -> IntStream.range(0, MarkFamily.MARKS).mapToObj(i -> Arguments.of(harm, i)));
  }

  static Stream<Arguments> twoMarks() {
    List<Arguments> pairs = new ArrayList<>();
    for (int one = 0; one < MarkFamily.MARKS; one++) {
      for (int other = 0; other < one; other++) {
        pairs.add(Arguments.of(harm(one), one, harm(one + other), other));
      }
    }
    return pairs.stream();
  }

  static Stream<Arguments> aMarkAndACode() {
    List<Arguments> pairs = new ArrayList<>();
    for (int mark = 0; mark < MarkFamily.MARKS; mark++) {
      for (int code = 0; code < 2; code++) {
        pairs.add(Arguments.of(harm(mark + code), mark, harm(mark / 2), code));
      }
    }
    return pairs.stream();
  }

  private static Harm harm(int number) {
    return Harm.values()[number % Harm.values().length];
  }

  @ParameterizedTest(name = "{0}: mark {1}")
  @MethodSource("oneMark")
  void withoutOneMarkACardIsReadRightly(Harm harm, int mark) {
    Readings.assertRight(read(CARD, harm, marks(CARD, mark)), CARD.truth());
  }

  @ParameterizedTest
  @EnumSource(Harm.class)
  void withoutTwoMarksAShotSheetIsReadRightly(Harm harm) {
    int one = harm.ordinal();

    Readings.assertRight(read(PAIR, harm, marks(PAIR, one, one + 4)), PAIR.truth());
  }

  @ParameterizedTest(name = "{0}: mark {1}; {2}: mark {3}")
  @MethodSource("twoMarks")
  void withoutTwoMarksACardIsReadRightly(Harm harm, int one, Harm otherHarm, int other) {
    BufferedImage picture = CARD.picture();
    harm(CARD, picture, harm, marks(CARD, one));
    harm(CARD, picture, otherHarm, marks(CARD, other));

    Readings.assertRight(Readings.of(picture), CARD.truth());
  }

  @ParameterizedTest(name = "{0}: mark {1}; {2}: code {3}")
  @MethodSource("aMarkAndACode")
  void withoutOneMarkAndOneCodeACardIsReadRightly(Harm harm, int mark, Harm codeHarm, int code) {
    BufferedImage picture = CARD.picture();
    harm(CARD, picture, harm, marks(CARD, mark));
    harm(CARD, picture, codeHarm, List.of(CARD.layout().codes().get(code)));

    Readings.assertRight(Readings.of(picture), CARD.truth());
  }

  @ParameterizedTest
  @EnumSource(Harm.class)
  void withBothCodesHarmedTheRightSheetIsNamedOrNone(Harm harm) {
    PageReading reading = read(CARD, harm, CARD.layout().codes());

    if (reading.state() == ReadingState.REFUSED) {
      Readings.assertRefused(
          reading, ReasonCode.CODE_UNREADABLE, "Neither of the sheet's two codes");
    } else {
      Readings.assertRight(reading, CARD.truth());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Harm.class,
      names = {"TORN", "INKED", "CUT_OFF"})
  void withFiveMarksGoneTheSheetIsRefusedWithTheNumberSeen(Harm harm) {
    PageReading reading = read(CARD, harm, marks(CARD, 0, 1, 3, 4, 6));

    Readings.assertRefused(reading, ReasonCode.TOO_FEW_MARKS, "3 of the sheet's eight");
  }

  @ParameterizedTest
  @EnumSource(
      value = Harm.class,
      names = {"TORN", "INKED", "CUT_OFF"})
  void withAllMarksOfOneSideGoneTheSheetIsRefused(Harm harm) {
    PageReading reading = read(CARD, harm, marks(CARD, 0, 1, 2, 3));

    Readings.assertRefused(reading, ReasonCode.TOO_FEW_MARKS, "only a part of the sheet");
  }

  private static List<MmRect> marks(CleanScan scan, int... numbers) {
    List<RegisterMark> marks = scan.layout().marks();
    assertThat(marks).hasSize(MarkFamily.MARKS);
    return IntStream.of(numbers).mapToObj(i -> marks.get(i).square()).toList();
  }

  private static PageReading read(CleanScan scan, Harm harm, List<MmRect> squares) {
    BufferedImage picture = scan.picture();
    harm(scan, picture, harm, squares);
    return Readings.of(picture);
  }

  private static void harm(CleanScan scan, BufferedImage picture, Harm harm, List<MmRect> squares) {
    SplittableRandom random = new SplittableRandom(squares.hashCode());
    Graphics2D g = scan.brush(picture);
    squares.forEach(square -> harm.apply(g, square, scan.layout().page(), random));
    g.dispose();
  }
}
