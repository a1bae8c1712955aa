package sheaf.samples.digit;

import ai.djl.engine.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import sheaf.samples.Terminal;
import sheaf.samples.digit.Lessons.Lesson;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.opencv.Network;

/** Teaches the recogniser of digits anew: {@code TrainDigits DATA ONNX LESSONS TIMES}. */
public final class TrainDigits {

  /** Pictures that are looked at before the network learns from them. */
  private static final int BATCH = 64;

  private static final int SEED = 1;

  /** Scores of the file and of the network differ by rounding only: 11 scores of some tens. */
  private static final double MOST_OFF = 1e-2;

  private TrainDigits() {}

  /**
   * Learns, and writes the network as an ONNX file after each time through all lessons.
   *
   * @param args the folder of the set's idx files, the file to write, how many pictures to make,
   *     and how many times to go through them
   */
  public static void main(String[] args) throws IOException {
    if (args.length != 4) {
      throw new IllegalArgumentException("usage: TrainDigits DATA ONNX LESSONS TIMES");
    }
    // Its libraries must be loaded before those of OpenCV, which bring some of the same names.
    Engine.getInstance().setRandomSeed(SEED);
    NativeLibraries.load();
    Lessons lessons = new Lessons(DigitSet.training(Path.of(args[0])), SEED);
    List<Lesson> made = lessons.first(Integer.parseInt(args[2]));
    learn(made, Integer.parseInt(args[3]), Path.of(args[1]));
  }

  private static void learn(List<Lesson> made, int times, Path file) throws IOException {
    Random random = new Random(SEED);
    List<Lesson> order = new ArrayList<>(made);
    int batches = order.size() / BATCH;
    try (DigitNet net = new DigitNet(batches * times)) {
      for (int time = 1; time <= times; time++) {
        Collections.shuffle(order, random);
        double loss = 0;
        for (int i = 0; i < batches; i++) {
          List<Lesson> batch = order.subList(i * BATCH, (i + 1) * BATCH);
          loss += net.learn(batch.stream().map(one -> another(one, random)).toList());
        }
        Terminal.out().printf("%d times: mean loss %.4f%n", time, loss / batches);
        Files.write(file, net.onnx());
      }
      compare(net, Files.readAllBytes(file), made.subList(0, BATCH));
    }
  }

  /** What was seen before is changed a little, as new lessons are dear to make. */
  private static Lesson another(Lesson lesson, Random random) {
    return random.nextBoolean() ? lesson.moved(random) : lesson.bent(random);
  }

  /** Holds the file, as OpenCV runs it, against the network that was taught. */
  private static void compare(DigitNet net, byte[] file, List<Lesson> some) {
    float[] taught = net.scores(some);
    int side = DigitPicture.SIDE;
    int places = DigitPicture.LAYERS * side * side;
    float[] dark = new float[some.size() * places];
    for (int i = 0; i < some.size(); i++) {
      System.arraycopy(some.get(i).picture().dark(), 0, dark, i * places, places);
    }
    float[] read =
        Network.onnx(file).run(new int[] {some.size(), DigitPicture.LAYERS, side, side}, dark);
    double most = 0;
    for (int i = 0; i < taught.length; i++) {
      most = Math.max(most, Math.abs(taught[i] - read[i]));
    }
    Terminal.out().printf("OpenCV's scores are at most %.2g off%n", most);
    if (most > MOST_OFF) {
      throw new IllegalStateException("The file does not say what the network learnt.");
    }
  }
}
