package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.InBox;
import sheaf.core.reading.NumberJudge;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

class RecogniserTest {

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  /** Digits of the open set that the recogniser did not learn from, in boxes of our own. */
  @Test
  void theRecogniserReadsDigitsInBoxesAndTurnsRubbishAway() {
    DigitSet digits = SomeDigits.SET;
    SplittableRandom random = new SplittableRandom(5);
    int told = 0;
    int wrong = 0;
    int taken = 0;
    for (int i = 0; i < digits.size(); i++) {
      InBox digit = shown(Marks.hand(digits.pictures()[i], random), digits, random);
      told += digit instanceof InBox.Digit ? 1 : 0;
      wrong += sure(digit) && ((InBox.Digit) digit).digit() != digits.labels()[i] ? 1 : 0;
      taken += sure(shown(Marks.rubbish(digits, random), digits, random)) ? 1 : 0;
    }
    assertThat(told).isGreaterThan(270);
    assertThat(wrong).isLessThanOrEqualTo(1);
    assertThat(taken).isLessThanOrEqualTo(3);
  }

  private static boolean sure(InBox box) {
    return box instanceof InBox.Digit digit && digit.confidence() >= NumberJudge.USUALLY_SURE;
  }

  @Test
  void typedDigitsAreReadToo() {
    DigitSet digits = SomeDigits.SET;
    SplittableRandom random = new SplittableRandom(6);
    for (int digit = 0; digit < 10; digit++) {
      assertThat(shown(Marks.printed(digit, random), digits, random))
          .isInstanceOfSatisfying(InBox.Digit.class, d -> assertThat(d.confidence()).isPositive())
          .extracting(box -> ((InBox.Digit) box).digit())
          .isEqualTo(digit);
    }
  }

  private static InBox shown(PenMark mark, DigitSet digits, SplittableRandom random) {
    Optional<DigitPicture> seen = BoxPatch.seen(mark, digits, random.nextLong());
    return seen.<InBox>map(one -> DigitReader.bundled().read(List.of(one)).get(0))
        .orElse(new InBox.Blank());
  }
}
