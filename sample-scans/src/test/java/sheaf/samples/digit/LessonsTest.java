package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.samples.digit.Lessons.Lesson;
import sheaf.scanner.digit.DigitOdds;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

class LessonsTest {

  private static List<Lesson> some;

  @BeforeAll
  static void make() {
    NativeLibraries.load();
    some = new Lessons(SomeDigits.SET, 3).first(60);
  }

  @Test
  void everyRunLearnsFromTheSame() {
    List<Lesson> again = new Lessons(SomeDigits.SET, 3).first(20);
    for (int i = 0; i < again.size(); i++) {
      assertThat(again.get(i).label()).isEqualTo(some.get(i).label());
      assertThat(again.get(i).picture().dark()).isEqualTo(some.get(i).picture().dark());
    }
  }

  @Test
  void aFifthOrSoIsNoDigit() {
    assertThat(some.stream().filter(one -> one.label() == 10).count()).isBetween(4L, 24L);
  }

  @Test
  void whatIsMovedOrBentALittleStillShowsTheSame() {
    SplittableRandom random = new SplittableRandom(4);
    List<Lesson> digits = some.stream().filter(one -> one.label() < 10).toList();
    List<Lesson> changed =
        digits.stream()
            .flatMap(one -> List.of(one.moved(random), one.bent(random)).stream())
            .toList();
    List<DigitPicture> pictures = changed.stream().map(Lesson::picture).toList();
    List<DigitOdds> odds = DigitReader.bundled().odds(pictures);
    long right = 0;
    for (int i = 0; i < changed.size(); i++) {
      right += odds.get(i).best() == changed.get(i).label() ? 1 : 0;
    }
    assertThat(right).isGreaterThanOrEqualTo(changed.size() * 95L / 100);
  }
}
