package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.scanner.digit.DigitOdds;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

/** Holds what OpenCV, a reader of ONNX that is not ours, makes of a file to plain sums. */
class OnnxFileTest {

  private static final int SIDE = DigitPicture.SIDE;
  private static final int CLASSES = 11;

  /** One takes the place to the left in the first layer, one its negative in the second. */
  private static final float[] KERNELS = kernels();

  private static final float[] BIASES = {0, 0.75f};

  private static final float[] MATRIX = filled(CLASSES * 2 * SIDE / 2 * SIDE / 2, 1);

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  private static float[] kernels() {
    float[] kernels = new float[2 * DigitPicture.LAYERS * 9];
    kernels[3] = 1;
    kernels[3 * 9 + 3] = -1;
    return kernels;
  }

  private static float[] filled(int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    float[] values = new float[count];
    for (int i = 0; i < count; i++) {
      values[i] = (float) random.nextGaussian() * 0.1f;
    }
    return values;
  }

  private static DigitReader reader() {
    OnnxFile file = new OnnxFile(DigitPicture.LAYERS, SIDE);
    file.convolution(KERNELS, BIASES);
    file.halved();
    file.dense(MATRIX, new float[CLASSES]);
    return new DigitReader(file.bytes());
  }

  /** A picture with a margin that is empty, so that moving it loses nothing. */
  private static DigitPicture picture(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    float[] dark = new float[DigitPicture.LAYERS * SIDE * SIDE];
    for (int i = 0; i < dark.length; i++) {
      int x = i % SIDE;
      int y = i / SIDE % SIDE;
      boolean margin = Math.min(x, y) < 2 || Math.max(x, y) >= SIDE - 2;
      dark[i] = margin ? 0 : random.nextFloat();
    }
    return new DigitPicture(dark);
  }

  private static double[] scores(DigitPicture picture) {
    DigitPicture right = picture.moved(1, 0);
    double[] scores = new double[CLASSES];
    int half = SIDE / 2;
    for (int i = 0; i < 2 * half * half; i++) {
      double largest = 0;
      for (int corner = 0; corner < 4; corner++) {
        int y = i / half % half * 2 + corner / 2;
        int place = y * SIDE + i % half * 2 + corner % 2;
        float first = right.dark()[place];
        float second = BIASES[1] - right.dark()[SIDE * SIDE + place];
        largest = Math.max(largest, i < half * half ? first : second);
      }
      for (int c = 0; c < CLASSES; c++) {
        scores[c] += largest * MATRIX[c * 2 * half * half + i];
      }
    }
    return scores;
  }

  /** The reader's mean over five places of a picture, by plain sums. */
  private static double[] means(DigitPicture picture) {
    double[] means = new double[CLASSES];
    for (int[] move : new int[][] {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      double[] scores = scores(picture.moved(move[0], move[1]));
      for (int c = 0; c < CLASSES; c++) {
        means[c] += scores[c] / 5;
      }
    }
    means[CLASSES - 1] -= DigitOdds.TOO_MANY_NONE;
    return means;
  }

  @Test
  void openCvMakesOfTheFileWhatPlainSumsSay() {
    for (int seed = 1; seed <= 5; seed++) {
      double[] means = means(picture(seed));
      int best = IntStream.range(0, 10).reduce(0, (a, b) -> means[b] > means[a] ? b : a);
      double sum = IntStream.range(0, CLASSES).mapToDouble(c -> Math.exp(means[c])).sum();
      DigitOdds odds = reader().odds(List.of(picture(seed))).get(0);
      assertThat(odds.best()).isEqualTo(best);
      assertThat(odds.confidence()).isCloseTo(Math.exp(means[best]) / sum, offset(1e-4));
    }
  }

  @Test
  void manyPicturesAreReadAsEachAlone() {
    DigitReader reader = reader();
    List<DigitPicture> pictures = IntStream.range(0, 5).mapToObj(OnnxFileTest::picture).toList();
    List<DigitOdds> together = reader.odds(pictures);
    for (int i = 0; i < pictures.size(); i++) {
      DigitOdds alone = reader.odds(pictures.subList(i, i + 1)).get(0);
      assertThat(together.get(i).best()).isEqualTo(alone.best());
      assertThat(together.get(i).confidence()).isCloseTo(alone.confidence(), offset(1e-5));
    }
  }
}
