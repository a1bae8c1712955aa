package sheaf.samples.digit;

import ai.djl.Model;
import ai.djl.ndarray.NDArray;
import ai.djl.ndarray.NDList;
import ai.djl.ndarray.NDManager;
import ai.djl.ndarray.types.Shape;
import ai.djl.nn.AbstractBlock;
import ai.djl.nn.Activation;
import ai.djl.nn.Blocks;
import ai.djl.nn.SequentialBlock;
import ai.djl.nn.convolutional.Conv2d;
import ai.djl.nn.core.Linear;
import ai.djl.nn.norm.BatchNorm;
import ai.djl.nn.norm.Dropout;
import ai.djl.nn.pooling.Pool;
import ai.djl.training.DefaultTrainingConfig;
import ai.djl.training.GradientCollector;
import ai.djl.training.Trainer;
import ai.djl.training.loss.Loss;
import ai.djl.training.optimizer.Optimizer;
import ai.djl.training.tracker.Tracker;
import java.util.ArrayList;
import java.util.List;
import sheaf.samples.digit.Lessons.Lesson;
import sheaf.scanner.digit.DigitPicture;

/** The convolutional network that tells the ten digits and what is none, while it learns. */
final class DigitNet implements AutoCloseable {

  /** What it tells apart: the digits 0 to 9, and 10 for what is none. */
  static final int CLASSES = 11;

  /** Filters of the convolutions, each over 3 x 3 places. */
  private static final int[] FILTERS = {16, 32, 32, 64, 64};

  /** Behind these convolutions only the largest of each four places is kept. */
  private static final List<Integer> HALVED = List.of(0, 2);

  private static final int HIDDEN = 128;

  /** The share of hidden values that are left out at random in each step. */
  private static final float DROPPED = 0.4f;

  /** The longest step, and the shortest. */
  private static final float FASTEST = 2e-3f;

  private static final float SLOWEST = 1e-5f;

  /**
   * Steps become shorter as the first part of a half cosine does that is planned for this many
   * times as many steps; after {@link #FALL} of all they fall to the shortest, up to {@link
   * #AGAIN}.
   */
  private static final double PLANNED = 13 / 6.0;

  private static final double FALL = 7850 / 10_308.0;
  private static final double AGAIN = 5 / 6.0;

  /** From there on they are as long as this once more, and fall to the end (Loshchilov 2017). */
  private static final float FASTEST_AGAIN = 1e-3f;

  /** How strongly weights are drawn to zero, per step of length one. */
  private static final float DECAY = 0.01f;

  /** Of the means that norms run on, this share is kept from step to step. */
  private static final float KEPT = 0.99f;

  /** Added to variances that are divided by. */
  private static final float TINY = 1e-5f;

  private final SequentialBlock block = new SequentialBlock();
  private final List<Conv2d> convolutions = new ArrayList<>();
  private final List<BatchNorm> norms = new ArrayList<>();
  private final Linear hidden = Linear.builder().setUnits(HIDDEN).build();
  private final Linear last = Linear.builder().setUnits(CLASSES).build();
  private final Model model = Model.newInstance("digits");
  private final Trainer trainer;

  /** A network that knows nothing yet and will learn in so many steps. */
  DigitNet(int steps) {
    for (int i = 0; i < FILTERS.length; i++) {
      addConvolution(FILTERS[i]);
      if (HALVED.contains(i)) {
        block.add(Pool.maxPool2dBlock(new Shape(2, 2), new Shape(2, 2)));
      }
    }
    block.add(Blocks.batchFlattenBlock()).add(hidden).add(Activation.reluBlock());
    block.add(Dropout.builder().optRate(DROPPED).build()).add(last);
    model.setBlock(block);
    trainer = model.newTrainer(config(steps));
    trainer.initialize(new Shape(1, DigitPicture.LAYERS, DigitPicture.SIDE, DigitPicture.SIDE));
  }

  private void addConvolution(int filters) {
    Conv2d convolution =
        Conv2d.builder()
            .setFilters(filters)
            .setKernelShape(new Shape(3, 3))
            .optPadding(new Shape(1, 1))
            .optBias(false)
            .build();
    BatchNorm norm = BatchNorm.builder().optEpsilon(TINY).optMomentum(KEPT).build();
    convolutions.add(convolution);
    norms.add(norm);
    block.add(convolution).add(norm).add(Activation.reluBlock());
  }

  private static DefaultTrainingConfig config(int steps) {
    Tracker rate = step -> rate(step, steps);
    return new DefaultTrainingConfig(Loss.softmaxCrossEntropyLoss())
        .optOptimizer(
            Optimizer.adamW().optLearningRateTracker(rate).optWeightDecays(DECAY).build());
  }

  private static float rate(int step, int steps) {
    double at = step / (double) steps;
    if (at > AGAIN) {
      double fall = halfCosine((at - AGAIN) / (1 - AGAIN));
      return (float) (SLOWEST + (FASTEST_AGAIN - SLOWEST) * fall);
    }
    double slow = halfCosine(Math.min(at, FALL) / PLANNED);
    double fall = halfCosine(Math.max(0, at - FALL) / (AGAIN - FALL));
    return (float) (SLOWEST + (FASTEST - SLOWEST) * slow * fall);
  }

  /** From 1 at 0 to 0 at 1, and 0 beyond. */
  private static double halfCosine(double share) {
    return (1 + Math.cos(Math.PI * Math.min(1, share))) / 2;
  }

  /**
   * Takes a step.
   *
   * @return the mean loss before it: the negative logarithm of the right class's odds
   */
  double learn(List<Lesson> lessons) {
    float[] labels = new float[lessons.size()];
    for (int i = 0; i < labels.length; i++) {
      labels[i] = lessons.get(i).label();
    }
    double loss;
    try (NDManager manager = trainer.getManager().newSubManager();
        GradientCollector collector = trainer.newGradientCollector()) {
      NDList in = pictures(lessons, manager);
      NDArray right = manager.create(labels, new Shape(labels.length, 1));
      NDList scores = trainer.forward(in);
      NDArray mean = trainer.getLoss().evaluate(new NDList(right), scores);
      collector.backward(mean);
      loss = mean.getFloat();
      scores.close();
      mean.close();
    }
    trainer.step();
    return loss;
  }

  /** The scores of all classes for each picture, one picture behind the other. */
  float[] scores(List<Lesson> lessons) {
    try (NDManager manager = trainer.getManager().newSubManager();
        NDList scores = trainer.evaluate(pictures(lessons, manager))) {
      return scores.head().toFloatArray();
    }
  }

  private static NDList pictures(List<Lesson> lessons, NDManager manager) {
    int side = DigitPicture.SIDE;
    int places = DigitPicture.LAYERS * side * side;
    float[] dark = new float[lessons.size() * places];
    for (int i = 0; i < lessons.size(); i++) {
      System.arraycopy(lessons.get(i).picture().dark(), 0, dark, i * places, places);
    }
    Shape shape = new Shape(lessons.size(), DigitPicture.LAYERS, side, side);
    return new NDList(manager.create(dark, shape));
  }

  /** What it has learnt, as an ONNX file; its norms are worked into its convolutions. */
  byte[] onnx() {
    OnnxFile file = new OnnxFile(DigitPicture.LAYERS, DigitPicture.SIDE);
    for (int i = 0; i < FILTERS.length; i++) {
      float[] kernels = values(convolutions.get(i), "weight");
      file.convolution(kernels, folded(norms.get(i), kernels));
      if (HALVED.contains(i)) {
        file.halved();
      }
    }
    file.dense(values(hidden, "weight"), values(hidden, "bias"));
    file.rectified();
    file.dense(values(last, "weight"), values(last, "bias"));
    return file.bytes();
  }

  /** Works a norm into the kernels before it; what is left of it are their biases. */
  private static float[] folded(BatchNorm norm, float[] kernels) {
    float[] biases = values(norm, "beta");
    float[] gains = values(norm, "gamma");
    float[] means = values(norm, "runningMean");
    float[] variances = values(norm, "runningVar");
    int each = kernels.length / biases.length;
    for (int filter = 0; filter < biases.length; filter++) {
      float gain = (float) (gains[filter] / Math.sqrt(variances[filter] + TINY));
      biases[filter] -= means[filter] * gain;
      for (int i = filter * each; i < (filter + 1) * each; i++) {
        kernels[i] *= gain;
      }
    }
    return biases;
  }

  private static float[] values(AbstractBlock layer, String name) {
    return layer.getParameters().get(name).getArray().toFloatArray();
  }

  @Override
  public void close() {
    trainer.close();
    model.close();
  }
}
