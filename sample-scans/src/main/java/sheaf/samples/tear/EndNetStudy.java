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
import sheaf.scanner.tear.EndNet;
import sheaf.scanner.tear.TearPicture;

/**
 * Teaches the net that tells a tear's ends: {@code EndNetStudy WEIGHTS STEPS FOLDER...}, where the
 * folders hold pictures of tear sheets and their truths.
 */
public final class EndNetStudy {

  private static final int BATCH = 6;

  private static final float FASTEST = 2e-3f;

  private final List<LearnedSheet> sheets = new ArrayList<>();
  private final SplittableRandom random = new SplittableRandom(1);

  private EndNetStudy() {}

  public static void main(String[] arguments) throws Exception {
    Engine.getInstance();
    NativeLibraries.load();
    EndNetStudy study = new EndNetStudy();
    List<String> folders = List.of(arguments).subList(2, arguments.length);
    study.readNew(folders);
    System.out.println(study.sheets.size() + " sheets");
    study.learn(Path.of(arguments[0]), Integer.parseInt(arguments[1]), folders);
  }

  private final java.util.Set<Path> seen = new java.util.HashSet<>();

  private void readNew(List<String> folders) throws IOException {
    for (String folder : folders) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
          if (seen.add(file)) {
            try {
              LearnedSheet.read(
                      file.resolveSibling(file.getFileName().toString().replace(".json", ".jpg")))
                  .ifPresent(sheets::add);
            } catch (Exception e) {
              seen.remove(file);
            }
          }
        }
      }
    }
  }

  private void learn(Path weights, int steps, List<String> folders) throws IOException {
    Engine.getInstance().setRandomSeed(1);
    EndNetBlock block = new EndNetBlock();
    try (Model model = Model.newInstance("ends")) {
      model.setBlock(block);
      int[] step = {0};
      Tracker rate =
          Tracker.cosine()
              .setBaseValue(FASTEST)
              .optFinalValue(FASTEST / 50)
              .setMaxUpdates(steps)
              .build();
      DefaultTrainingConfig config =
          new DefaultTrainingConfig(Loss.l2Loss())
              .optOptimizer(Optimizer.adam().optLearningRateTracker(rate).optClipGrad(1f).build());
      try (Trainer trainer = model.newTrainer(config)) {
        trainer.initialize(
            new Shape(BATCH, TearPicture.PLANES, Lesson.SIDE, Lesson.SIDE));
        double[] sums = new double[6];
        long began = System.currentTimeMillis();
        for (step[0] = 1; step[0] <= steps; step[0]++) {
          step(trainer, sums);
          if (step[0] % 50 == 0) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < sums.length; i++) {
              line.append(" %.3f".formatted(sums[i] / 50));
              sums[i] = 0;
            }
            System.out.println(
                step[0] + line.toString() + " " + (System.currentTimeMillis() - began) / 1000 + " s, " + sheets.size());
          }
          if (step[0] % 200 == 0) {
            readNew(folders);
            Files.write(weights, block.weights());
          }
        }
        Files.write(weights, block.weights());
      }
    }
  }

  private void step(Trainer trainer, double[] sums) {
    try (NDManager manager = trainer.getManager().newSubManager()) {
      int picture = TearPicture.PLANES * Lesson.SIDE * Lesson.SIDE;
      int plane = Lesson.CELLS * Lesson.CELLS;
      float[] pictures = new float[BATCH * picture];
      float[] wanted = new float[BATCH * Lesson.PLANES * plane];
      for (int i = 0; i < BATCH; i++) {
        Lesson lesson = Lesson.draw(sheets.get(random.nextInt(sheets.size())), random);
        System.arraycopy(lesson.picture(), 0, pictures, i * picture, picture);
        System.arraycopy(
            lesson.wanted(), 0, wanted, i * lesson.wanted().length, lesson.wanted().length);
      }
      NDArray in =
          manager.create(
              pictures, new Shape(BATCH, TearPicture.PLANES, Lesson.SIDE, Lesson.SIDE));
      NDArray want =
          manager.create(wanted, new Shape(BATCH, Lesson.PLANES, Lesson.CELLS, Lesson.CELLS));
      try (GradientCollector collector = trainer.newGradientCollector()) {
        NDArray said = trainer.forward(new NDList(in)).head();
        NDArray[] losses = losses(said, want);
        NDArray loss = losses[0];
        for (int i = 1; i < losses.length; i++) {
          loss = loss.add(losses[i]);
        }
        collector.backward(loss);
        for (int i = 0; i < losses.length; i++) {
          sums[i] += losses[i].getFloat();
        }
      }
      trainer.step();
    }
  }

  private static NDArray at(NDArray planes, int from, int to) {
    return planes.get(":, " + from + ":" + to + ", :, :");
  }

  private static NDArray[] losses(NDArray said, NDArray want) {
    NDArray tailHere = at(want, 0, 1);
    NDArray tailTells = at(want, 2, 3);
    NDArray pointHere = at(want, 5, 6);
    NDArray pointTells = at(want, 7, 8);
    NDArray tail = heat(at(said, 0, 1), tailHere, at(want, 1, 2));
    NDArray point = heat(at(said, 1, 2), pointHere, at(want, 6, 7));
    NDArray tailAt = place(at(said, 2, 4), at(said, 4, 5), at(want, 3, 5), tailTells);
    NDArray pointAt = place(at(said, 5, 7), at(said, 7, 8), at(want, 8, 10), pointTells);
    NDArray ways =
        way(at(said, 8, 10), at(want, 10, 12), tailTells)
            .add(way(at(said, 10, 12), at(want, 12, 14), pointTells));
    NDArray sorts =
        sort(at(said, 12, 13), at(want, 14, 15), tailTells)
            .add(sort(at(said, 13, 14), at(want, 15, 16), tailTells).mul(0.5f));
    return new NDArray[] {tail, point, tailAt.mul(0.5f), pointAt.mul(0.5f), ways.mul(0.5f), sorts.mul(0.5f)};
  }

  private static NDArray softplus(NDArray x) {
    return x.abs().neg().exp().add(1).log().add(x.maximum(0));
  }

  private static NDArray heat(NDArray said, NDArray here, NDArray cost) {
    NDArray logit = said.sub(EndNet.SELDOM);
    NDArray p = ai.djl.nn.Activation.sigmoid(logit);
    NDArray yes = softplus(logit.neg()).mul(p.neg().add(1).square()).mul(here);
    NDArray no = softplus(logit).mul(p.square()).mul(cost).mul(here.neg().add(1));
    return yes.add(no).sum().div(here.sum().add(1));
  }

  private static NDArray place(NDArray said, NDArray raw, NDArray want, NDArray tells) {
    NDArray spread = raw.div(EndNet.MOST_LOG).tanh().mul(EndNet.MOST_LOG);
    NDArray off = said.sub(want).abs().sum(new int[] {1}, true);
    NDArray cost = off.mul(spread.neg().exp()).add(spread.mul(2));
    return cost.mul(tells).sum().div(tells.sum().add(1));
  }

  private static NDArray way(NDArray said, NDArray want, NDArray tells) {
    NDArray off = said.sub(want.div(10)).abs().sum(new int[] {1}, true);
    return off.mul(tells).sum().div(tells.sum().add(1));
  }

  private static NDArray sort(NDArray said, NDArray want, NDArray tells) {
    return softplus(said).sub(said.mul(want)).mul(tells).sum().div(tells.sum().add(1));
  }
}
