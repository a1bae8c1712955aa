package sheaf.samples.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;

/** How paper gives way to a point: draws holes at random. */
final class Tearing {

  /**
   * How far the opening's centroid lies off the axis, as a share of the shaft's diameter: a Weibull
   * distribution through a median of 5 % and a 95th percentile of 12 %.
   */
  private static final double OFFSET_SHAPE = Math.log(Math.log(20) / Math.log(2)) / Math.log(2.4);

  private static final double OFFSET_SCALE = 0.05 / Math.pow(Math.log(2), 1 / OFFSET_SHAPE);

  /** Flaps are redrawn until the offset is the wanted one within this, which slowly grows. */
  private static final double OFFSET_LEEWAY = 0.003;

  private static final double LEEWAY_GROWTH = 1.01;

  /** How unevenly the flaps close around the hole. */
  private static final double UNEVEN = 0.3;

  /** Share of the flaps that fold back wholly and leave the shaft's circle bare. */
  private static final double WHOLLY_BACK = 0.2;

  private static final double MOST_CLOSED = 0.92;

  /** Unevenness of the fold, as a share of the radius: 1 to 2 % of the diameter. */
  private static final double FOLD_NOISE = 0.03;

  private static final double RAG_NOISE = 0.035;

  private final double radius;
  private final RandomGenerator random;

  Tearing(double radius, RandomGenerator random) {
    this.radius = radius;
    this.random = random;
  }

  TornHole fieldPoint() {
    double[] boundaries = spread(random.nextInt(3, 8), random.nextDouble(2 * Math.PI));
    List<Cut> tears = new ArrayList<>();
    for (int i = 0; i + 1 < boundaries.length; i++) {
      tears.add(tear(boundaries[i]));
    }
    return new TornHole(radius, flaps(boundaries), tears, List.of());
  }

  TornHole broadhead(int blades, double cut) {
    double turn = random.nextDouble(2 * Math.PI);
    boolean hairline = random.nextDouble() < 0.4;
    double uneven = blades == 4 && random.nextInt(4) == 0 ? random.nextDouble(0.5, 0.75) : 1;
    List<Cut> slits = new ArrayList<>();
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < blades; i++) {
      double angle = turn + 2 * Math.PI * i / blades + Math.toRadians(random.nextDouble(-5, 5));
      double share = (i == 0 ? 1 : random.nextDouble(0.9, 1)) * (i % 2 == 0 ? 1 : uneven);
      slits.add(slit(angle, cut / 2 * share, hairline));
      angles.add(angle);
    }
    List<Cut> tears = new ArrayList<>();
    int more = random.nextInt(blades == 2 ? 1 : 0, blades == 2 ? 4 : 6 - blades);
    for (int i = 0; i < more; i++) {
      double angle = between(angles);
      angles.add(angle);
      tears.add(tear(angle));
    }
    return new TornHole(radius, flaps(closed(angles)), tears, slits);
  }

  /** Angles about evenly around, the first one again at the end. */
  private double[] spread(int count, double turn) {
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      angles.add(turn + 2 * Math.PI * (i + random.nextDouble(-0.3, 0.3)) / count);
    }
    return closed(angles);
  }

  private static double[] closed(List<Double> angles) {
    double[] sorted = new double[angles.size() + 1];
    for (int i = 0; i < angles.size(); i++) {
      sorted[i] = angles.get(i);
    }
    Arrays.sort(sorted, 0, angles.size());
    sorted[angles.size()] = sorted[0] + 2 * Math.PI;
    return sorted;
  }

  /** An angle in the middle part of the widest gap. */
  private double between(List<Double> angles) {
    double[] sorted = closed(angles);
    int widest = 0;
    for (int i = 1; i + 1 < sorted.length; i++) {
      if (sorted[i + 1] - sorted[i] > sorted[widest + 1] - sorted[widest]) {
        widest = i;
      }
    }
    double share = random.nextDouble(0.3, 0.7);
    return sorted[widest] + share * (sorted[widest + 1] - sorted[widest]);
  }

  /** Flaps that leave a third to four fifths of the shaft's disc open, off the axis as drawn. */
  private List<Flap> flaps(double[] boundaries) {
    double wanted = OFFSET_SCALE * Math.pow(-Math.log(1 - random.nextDouble()), 1 / OFFSET_SHAPE);
    double leeway = OFFSET_LEEWAY;
    while (true) {
      TornHole hole = new TornHole(radius, drawFlaps(boundaries), List.of(), List.of());
      double open = hole.openShare();
      MmPoint centroid = hole.openingCentroid();
      double offset = Math.hypot(centroid.x(), centroid.y()) / (2 * radius);
      if (open >= TornHole.LEAST_OPEN
          && open <= TornHole.MOST_OPEN
          && Math.abs(offset - wanted) < leeway) {
        return hole.flaps();
      }
      leeway *= LEEWAY_GROWTH;
    }
  }

  private List<Flap> drawFlaps(double[] boundaries) {
    double usual = random.nextDouble(0.1, 0.85);
    double leaning = random.nextDouble(2 * Math.PI);
    double uneven = Math.abs(random.nextGaussian()) * UNEVEN;
    List<Flap> flaps = new ArrayList<>();
    for (int i = 0; i + 1 < boundaries.length; i++) {
      double middle = (boundaries[i] + boundaries[i + 1]) / 2;
      double closing = usual + uneven * Math.cos(middle - leaning) + random.nextGaussian() * 0.1;
      boolean back = random.nextDouble() < WHOLLY_BACK;
      double limited = Math.max(0, Math.min(MOST_CLOSED, back ? closing * 0.15 : closing));
      flaps.add(flap(boundaries[i], boundaries[i + 1], limited));
    }
    return flaps;
  }

  private Flap flap(double from, double to, double closing) {
    boolean dragged = closing < 0.3 && to - from < 2 && random.nextDouble() < 0.22;
    return new Flap(
        from,
        to,
        dragged ? closing * 0.3 : closing,
        0.5 + random.nextDouble(-0.22, 0.22),
        random.nextDouble(1, 2.4),
        noise(FOLD_NOISE, 0.8),
        noise(RAG_NOISE, 0.45),
        dragged ? random.nextDouble(0.25, 0.75) : 0,
        random.nextDouble());
  }

  /** Uneven steps along a flap, each somewhat like the one before. */
  private double[] noise(double deviation, double likeness) {
    double[] noise = new double[Flap.STEPS + 1];
    double fresh = deviation * Math.sqrt(1 - likeness * likeness);
    noise[0] = random.nextGaussian() * deviation * 0.5;
    for (int i = 1; i < noise.length; i++) {
      noise[i] = likeness * noise[i - 1] + random.nextGaussian() * fresh;
    }
    return noise;
  }

  private Cut tear(double angle) {
    double diameter = 2 * radius;
    double length =
        diameter
            * (random.nextDouble() < 0.8
                ? random.nextDouble(0.08, 0.32)
                : random.nextDouble(0.32, 0.6));
    return tear(angle, radius + length);
  }

  /** A tear that ends at a distance from the axis. */
  Cut tear(double angle, double end) {
    double[] half = new double[Cut.STEPS + 1];
    double mouth = random.nextDouble(0.04, 0.3);
    for (int i = 0; i < half.length; i++) {
      double t = i / (double) Cut.STEPS;
      half[i] = mouth * Math.pow(1 - t, 0.7) * random.nextDouble(0.55, 1.2);
    }
    double start = radius * 0.93;
    return new Cut(
        angle,
        start,
        end,
        wander(0.07, 0.6),
        half,
        random.nextDouble(0, 0.55),
        random.nextGaussian() * 0.035);
  }

  private Cut slit(double angle, double end, boolean hairline) {
    double skewed = random.nextDouble() * random.nextDouble();
    double width = hairline ? random.nextDouble(0.08, 0.2) : 0.2 + 1.8 * skewed;
    double bulge = random.nextDouble();
    double[] ragged = wander(0.12, 0.9);
    double[] half = new double[Cut.STEPS + 1];
    for (int i = 0; i < half.length; i++) {
      double t = i / (double) Cut.STEPS;
      double tapered = Math.pow(1 - t, 0.7);
      double lens = Math.pow(Math.sin(Math.PI * (0.12 + 0.88 * t)), 0.8);
      half[i] = width / 2 * ((1 - bulge) * tapered + bulge * lens) * (1 + ragged[i]) + 0.02;
    }
    return new Cut(
        angle,
        radius * random.nextDouble(0.5, 0.9),
        end,
        wander(0.14, 0.5),
        half,
        hairline ? random.nextDouble(0, 0.25) : random.nextDouble(0, 0.15),
        random.nextGaussian() * 0.05);
  }

  /** A crooked line: it drifts by so much each step and keeps within a limit. */
  private double[] wander(double step, double limit) {
    double[] wander = new double[Cut.STEPS + 1];
    for (int i = 1; i < wander.length; i++) {
      double drift = 0.88 * wander[i - 1] + random.nextGaussian() * step;
      wander[i] = Math.max(-limit, Math.min(limit, drift));
    }
    return wander;
  }
}
