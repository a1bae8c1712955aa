package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.InBox;
import sheaf.core.reading.NumberJudge;
import sheaf.samples.digit.Lessons.Lesson;
import sheaf.scanner.digit.DigitOdds;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

class NetworkTest {

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  private static float[] filled(int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    float[] values = new float[count];
    for (int i = 0; i < count; i++) {
      values[i] = (float) random.nextGaussian();
    }
    return values;
  }

  /** What comes out, weighted: a loss whose slope by what comes out is the weights. */
  private static double loss(Layer layer, float[] in, float[] weights) {
    float[] out = layer.forward(in, false);
    double sum = 0;
    for (int i = 0; i < out.length; i++) {
      sum += out[i] * weights[i];
    }
    return sum;
  }

  /** Compares slopes with differences, which need no knowledge of the layer. */
  private static void slopesAreDifferences(Layer layer, float[] in) {
    float[] weights = filled(layer.forward(in, false).length, 9);
    float[] back = layer.backward(weights.clone());
    for (int i = 0; i < in.length; i += in.length / 7) {
      float kept = in[i];
      in[i] = kept + 0.01f;
      double more = loss(layer, in, weights);
      in[i] = kept - 0.01f;
      double less = loss(layer, in, weights);
      in[i] = kept;
      assertThat(back[i]).isCloseTo((float) ((more - less) / 0.02), offset(0.05f));
    }
  }

  @Test
  void slopesThroughTheLayersAreWhatDifferencesSay() {
    slopesAreDifferences(new Dense(20, 5, 2, new SplittableRandom(1)), filled(40, 2));
    slopesAreDifferences(new Pool(2, 4, 2), filled(64, 3));
  }

  @Test
  void openCvReadsTheFileThatIsWrittenAndManyPicturesAsItReadsEach() {
    DigitReader reader = new DigitReader(OnnxFile.of(new Network(1)));
    List<DigitPicture> pictures =
        new Lessons(SomeDigits.SET, 4).some(5, 0).stream().map(Lesson::picture).toList();
    List<DigitOdds> together = reader.odds(pictures);
    for (int i = 0; i < pictures.size(); i++) {
      DigitOdds alone = reader.odds(pictures.subList(i, i + 1)).get(0);
      assertThat(together.get(i).best()).isEqualTo(alone.best());
      assertThat(together.get(i).confidence()).isCloseTo(alone.confidence(), offset(1e-5));
    }
  }

  @Test
  void aFewBatchesAreEnoughToLearnSomething() {
    Lessons lessons = new Lessons(SomeDigits.SET, 3);
    List<Lesson> some = lessons.some(Network.BATCH, 0);
    Network network = new Network(2);
    double first = TrainDigits.learn(network, some, 1e-3);
    double last = first;
    for (int i = 0; i < 25; i++) {
      last = TrainDigits.learn(network, some, 1e-3);
    }
    assertThat(last).isLessThan(first / 3);
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
