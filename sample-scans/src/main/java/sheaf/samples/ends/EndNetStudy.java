package sheaf.samples.ends;

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
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import sheaf.samples.Terminal;
import sheaf.samples.Workers;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.tear.TearPicture;

/**
 * Teaches the net that tells a tear's ends, the reader's {@code tear-ends.weights}: {@code
 * EndNetStudy WEIGHTS SHEETS STEPS} makes so many sheets and learns so many times from some squares
 * of them.
 */
public final class EndNetStudy {

  /** Squares that are looked at before the net learns from them. */
  private static final int BATCH = 6;

  /** How fast it learns in the beginning; it slows down to a fiftieth. */
  private static final float FASTEST = 2e-3f;

  private static final float SLOWER = 50;

  /** No weight is pulled harder than this. */
  private static final float MOST_PULL = 1;

  /** The sheets' first seed; figures are measured on others. */
  private static final long FIRST = 500_001;

  /** After so many steps what was learnt so far is written and told. */
  private static final int OFTEN = 500;

  private final Path file;
  private final List<LearnedSheet> sheets;
  private final SplittableRandom random = new SplittableRandom(1);

  private EndNetStudy(Path file, List<LearnedSheet> sheets) {
    this.file = file;
    this.sheets = sheets;
  }

  /** Makes the sheets, learns from them and writes the weights. */
  public static void main(String[] arguments)
      throws ExecutionException, InterruptedException, IOException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException("usage: EndNetStudy WEIGHTS SHEETS STEPS");
    }
    // Its libraries must be loaded before those of OpenCV, which bring some of the same names.
    Engine.getInstance().setRandomSeed(1);
    NativeLibraries.load();
    long last = FIRST + Long.parseLong(arguments[1]) - 1;
    int threads = Runtime.getRuntime().availableProcessors();
    List<LearnedSheet> sheets =
        Workers.each(FIRST, last, threads, LearnedSheet::make).stream()
            .flatMap(Optional::stream)
            .toList();
    Terminal.out().printf("%d sheets to learn from%n", sheets.size());
    new EndNetStudy(Path.of(arguments[0]), sheets).learn(Integer.parseInt(arguments[2]));
  }

  private void learn(int steps) throws IOException {
    EndNetBlock block = new EndNetBlock();
    try (Model model = Model.newInstance("tear-ends")) {
      model.setBlock(block);
      try (Trainer trainer = model.newTrainer(config(steps))) {
        trainer.initialize(new Shape(BATCH, TearPicture.PLANES, Lesson.SIDE, Lesson.SIDE));
        double loss = 0;
        int told = 0;
        for (int step = 1; step <= steps; step++) {
          loss += step(trainer);
          if (step % OFTEN == 0 || step == steps) {
            Files.write(file, block.weights());
            Terminal.out().printf("%d steps: mean loss %.4f%n", step, loss / (step - told));
            loss = 0;
            told = step;
          }
        }
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

  /** One step, and what the net's errors cost before it. */
  private float step(Trainer trainer) {
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
      trainer.step();
      return sum.getFloat();
    }
  }
}
