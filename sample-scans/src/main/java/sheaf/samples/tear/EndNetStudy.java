package sheaf.samples.tear;

import ai.djl.Model;
import ai.djl.engine.Engine;
import ai.djl.ndarray.NDArray;
import ai.djl.ndarray.NDList;
import ai.djl.ndarray.NDManager;
import ai.djl.ndarray.types.Shape;
import ai.djl.training.DefaultTrainingConfig;
import ai.djl.training.GradientCollector;
import ai.djl.training.Trainer;
import ai.djl.training.loss.Loss;
import ai.djl.training.optimizer.Optimizer;
import ai.djl.training.tracker.Tracker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.tear.TearPicture;

/**
 * Teaches the net that tells a tear's ends, the reader's {@code tear-ends.weights}: {@code
 * EndNetStudy WEIGHTS STEPS FOLDER...}, where the folders hold pictures of tear sheets and their
 * truths.
 */
public final class EndNetStudy {

  /** Squares that are looked at before the net learns from them. */
  private static final int BATCH = 6;

  /** How fast it learns in the beginning; it slows down to a fiftieth. */
  private static final float FASTEST = 2e-3f;

  private static final float SLOWER = 50;

  /** No weight is pulled harder than this. */
  private static final float MOST_PULL = 1;

  private final List<LearnedSheet> sheets = new ArrayList<>();
  private final SplittableRandom random = new SplittableRandom(1);

  private EndNetStudy() {}

  /** Learns from the folders and writes the weights. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length < 3) {
      throw new IllegalArgumentException("usage: EndNetStudy WEIGHTS STEPS FOLDER...");
    }
    // Its libraries must be loaded before those of OpenCV, which bring some of the same names.
    Engine.getInstance().setRandomSeed(1);
    NativeLibraries.load();
    EndNetStudy study = new EndNetStudy();
    for (String folder : List.of(arguments).subList(2, arguments.length)) {
      study.read(Path.of(folder));
    }
    Files.write(Path.of(arguments[0]), study.learn(Integer.parseInt(arguments[1])));
  }

  private void read(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".jpg")).sorted().toList()) {
        LearnedSheet.read(file).ifPresent(sheets::add);
      }
    }
  }

  private byte[] learn(int steps) {
    EndNetBlock block = new EndNetBlock();
    try (Model model = Model.newInstance("tear-ends")) {
      model.setBlock(block);
      try (Trainer trainer = model.newTrainer(config(steps))) {
        trainer.initialize(new Shape(BATCH, TearPicture.PLANES, Lesson.SIDE, Lesson.SIDE));
        for (int step = 0; step < steps; step++) {
          step(trainer);
        }
        return block.weights();
      }
    }
  }

  private static DefaultTrainingConfig config(int steps) {
    Tracker speed =
        Tracker.cosine()
            .setBaseValue(FASTEST)
            .optFinalValue(FASTEST / SLOWER)
            .setMaxUpdates(steps)
            .build();
    return new DefaultTrainingConfig(Loss.l2Loss())
        .optOptimizer(
            Optimizer.adam().optLearningRateTracker(speed).optClipGrad(MOST_PULL).build());
  }

  private void step(Trainer trainer) {
    float[] pictures = new float[BATCH * TearPicture.PLANES * Lesson.SIDE * Lesson.SIDE];
    float[] wanted = new float[BATCH * Lesson.PLANES * Lesson.CELLS * Lesson.CELLS];
    for (int i = 0; i < BATCH; i++) {
      Lesson lesson = Lesson.draw(sheets.get(random.nextInt(sheets.size())), random);
      float[] picture = lesson.picture();
      System.arraycopy(picture, 0, pictures, i * picture.length, picture.length);
      float[] want = lesson.wanted();
      System.arraycopy(want, 0, wanted, i * want.length, want.length);
    }
    try (NDManager manager = trainer.getManager().newSubManager();
        GradientCollector collector = trainer.newGradientCollector()) {
      NDArray in =
          manager.create(pictures, new Shape(BATCH, TearPicture.PLANES, Lesson.SIDE, Lesson.SIDE));
      NDArray want =
          manager.create(wanted, new Shape(BATCH, Lesson.PLANES, Lesson.CELLS, Lesson.CELLS));
      NDArray[] losses = EndLoss.of(trainer.forward(new NDList(in)).head(), want);
      NDArray sum = losses[0];
      for (int i = 1; i < losses.length; i++) {
        sum = sum.add(losses[i]);
      }
      collector.backward(sum);
    }
    trainer.step();
  }
}
