package sheaf.samples.digit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.bytedeco.openblas.global.openblas;
import sheaf.samples.Terminal;
import sheaf.samples.digit.Lessons.Lesson;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.opencv.NativeLibraries;

/** Makes the recogniser of digits anew. */
public final class TrainDigits {

  /** The longest step; it becomes shorter as a half cosine does. */
  private static final double RATE = 1e-3;

  /** New pictures in each batch; the others are remembered ones. */
  private static final int NEW = Network.BATCH / 4;

  /** Batches between two lines of the report. */
  private static final int REPORT = 250;

  private TrainDigits() {}

  /**
   * Learns, and writes the network as an ONNX file.
   *
   * @param args the folder of the set's idx files, the file to write, how many batches of 32 to
   *     learn from, the seed, and where learning is to go on, the file to go on from
   */
  public static void main(String[] args)
      throws IOException, ExecutionException, InterruptedException {
    // One thread adds the sums up in the same order in every run. OpenBLAS comes before OpenCV,
    // which brings another copy of it: behind that one it is six times as slow.
    openblas.blas_set_num_threads(1);
    NativeLibraries.load();
    int batches = Integer.parseInt(args[2]);
    long seed = Long.parseLong(args[3]);
    Lessons lessons = new Lessons(DigitSet.training(Path.of(args[0])), seed);
    Network network = new Network(seed);
    if (args.length > 4) {
      network.goOnFrom(OnnxWeights.of(Files.readAllBytes(Path.of(args[4]))));
    }
    Rehearsal rehearsal = new Rehearsal(seed);
    // One thread makes them all: OpenCV keeps something for every thread that calls it.
    ExecutorService maker = Executors.newSingleThreadExecutor();
    Future<List<Lesson>> next = maker.submit(() -> lessons.some(NEW, 0));
    double loss = 0;
    for (int i = 0; i < batches; i++) {
      List<Lesson> batch = rehearsal.fill(next.get(), Network.BATCH);
      int following = i + 1;
      next = maker.submit(() -> lessons.some(NEW, following));
      loss += learn(network, batch, RATE * (1 + Math.cos(Math.PI * i / batches)) / 2);
      if (following % REPORT == 0) {
        Terminal.out().printf("%d batches: mean loss %.4f%n", following, loss / REPORT);
        loss = 0;
        Files.write(Path.of(args[1]), OnnxFile.of(network));
      }
    }
    maker.shutdown();
    Files.write(Path.of(args[1]), OnnxFile.of(network));
  }

  static double learn(Network network, List<Lesson> batch, double rate) {
    int places = DigitPicture.SIDE * DigitPicture.SIDE;
    float[] pictures = new float[places * batch.size()];
    int[] labels = new int[batch.size()];
    for (int b = 0; b < labels.length; b++) {
      labels[b] = batch.get(b).label();
      for (int i = 0; i < places; i++) {
        pictures[i * labels.length + b] = batch.get(b).picture().dark()[i];
      }
    }
    return network.learn(pictures, labels, rate);
  }
}
