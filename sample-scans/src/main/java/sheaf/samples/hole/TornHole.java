package sheaf.samples.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;

/**
 * The hole that an arrow's point tears into paper, in true millimetres from the shaft's axis.
 *
 * <p>A conical point splits the paper along a few radial tears; the flaps between them fold back on
 * the shaft's circle and close again more or less when the shaft is drawn out. So the opening is
 * the ragged figure between the flaps' tips, not the shaft's disc.
 *
 * @param radius of the shaft
 * @param flaps around the axis, in order of angle
 * @param slits cut by blades; none for a field point
 */
public record TornHole(double radius, List<Flap> flaps, List<Slit> slits) {

  /** Least and greatest share of the shaft's disc that stays open. */
  public static final double LEAST_OPEN = 0.35;

  /** Above this a hole would be punched, not torn. */
  public static final double MOST_OPEN = 0.80;

  /**
   * How unevenly the flaps close, set so that the opening lies off the axis as shot paper's does.
   */
  private static final double UNEVEN = 0.46;

  /** Copies the lists. */
  public TornHole {
    flaps = List.copyOf(flaps);
    slits = List.copyOf(slits);
  }

  /**
   * A piece of paper between two tears.
   *
   * @param from angle of the tear before it, in radians
   * @param to angle of the tear after it, greater than {@code from}
   * @param closing how far it closes its part of the hole again, 0 to 1
   * @param lean how far its tip leans toward the later tear, -1 to 1
   * @param tear length of the tear before it beyond the shaft's circle, in millimetres
   * @param bend by which that tear is crooked, in millimetres
   * @param gape width of that tear's mouth in millimetres
   * @param dragged whether it was drawn back out to the front and lies on the paper
   * @param shade how dark its folded side is, 0 to 1
   * @param rim small unevenness of its fold, as shares of the radius, from {@code from} to {@code
   *     to}
   */
  public record Flap(
      double from,
      double to,
      double closing,
      double lean,
      double tear,
      double bend,
      double gape,
      boolean dragged,
      double shade,
      double[] rim) {}

  /**
   * A cut made by one blade.
   *
   * @param angle in radians
   * @param length from the axis to its end
   * @param width at the hub
   * @param wander sideways, in millimetres, at even steps from the hub to the end
   * @param closed how much of its width has closed again, 0 to 1
   */
  public record Slit(double angle, double length, double width, double[] wander, double closed) {}

  /** A field point's hole. */
  public static TornHole fieldPoint(double radius, RandomGenerator random) {
    while (true) {
      TornHole hole = new TornHole(radius, flaps(radius, random), List.of());
      double open = hole.openShare();
      if (open >= LEAST_OPEN && open <= MOST_OPEN) {
        return hole;
      }
    }
  }

  /** A broadhead's hole: a torn hub and a slit for each blade. */
  public static TornHole broadhead(double radius, int blades, double cut, RandomGenerator random) {
    TornHole hub = fieldPoint(radius, random);
    List<Slit> slits = new ArrayList<>();
    double turn = random.nextDouble(2 * Math.PI);
    boolean hairline = random.nextDouble() < 0.35;
    for (int i = 0; i < blades; i++) {
      double angle = turn + 2 * Math.PI * i / blades + Math.toRadians(random.nextDouble(-5, 5));
      double length = cut / 2 * random.nextDouble(0.9, 1);
      double width = hairline ? random.nextDouble(0.10, 0.25) : random.nextDouble(0.3, 2.0);
      slits.add(new Slit(angle, i == 0 ? cut / 2 : length, width, wander(random), closed(random)));
    }
    return new TornHole(radius, hub.flaps, slits);
  }

  private static double closed(RandomGenerator random) {
    return random.nextDouble(0, 0.5);
  }

  private static double[] wander(RandomGenerator random) {
    double[] wander = new double[9];
    double side = 0;
    for (int i = 1; i < wander.length; i++) {
      side = 0.8 * side + random.nextGaussian() * 0.13;
      wander[i] = Math.max(-0.5, Math.min(0.5, side));
    }
    return wander;
  }

  private static List<Flap> flaps(double radius, RandomGenerator random) {
    int count = random.nextInt(3, 8);
    double[] tears = new double[count + 1];
    double turn = random.nextDouble(2 * Math.PI);
    for (int i = 0; i < count; i++) {
      tears[i] = turn + 2 * Math.PI * (i + random.nextDouble(-0.3, 0.3)) / count;
    }
    tears[count] = tears[0] + 2 * Math.PI;
    double usual = random.nextDouble(0.1, 0.85);
    double leaning = random.nextDouble(2 * Math.PI);
    double uneven = Math.pow(Math.abs(random.nextGaussian()), 1.8) * UNEVEN;
    List<Flap> flaps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double middle = (tears[i] + tears[i + 1]) / 2;
      double closing = usual + uneven * Math.cos(middle - leaning) + random.nextGaussian() * 0.10;
      flaps.add(flap(radius, tears[i], tears[i + 1], Math.max(0, Math.min(0.92, closing)), random));
    }
    return flaps;
  }

  private static Flap flap(
      double radius, double from, double to, double closing, RandomGenerator random) {
    double shortTear = random.nextDouble(0.08, 0.35) * 2 * radius;
    double longTear = random.nextDouble(0.35, 0.6) * 2 * radius;
    double[] rim = new double[7];
    for (int i = 0; i < rim.length; i++) {
      rim[i] = random.nextGaussian() * 0.022;
    }
    return new Flap(
        from,
        to,
        closing,
        random.nextDouble(-0.5, 0.5),
        random.nextDouble() < 0.8 ? shortTear : longTear,
        random.nextGaussian() * 0.25,
        random.nextDouble(0.08, 0.6),
        closing < 0.25 && random.nextDouble() < 0.2,
        random.nextDouble(0.2, 1),
        rim);
  }

  /** The edge of the opening around the hub, without tears and slits, in order of angle. */
  public List<MmPoint> opening() {
    List<MmPoint> edge = new ArrayList<>();
    for (Flap flap : flaps) {
      edge.addAll(edge(flap));
    }
    return edge;
  }

  /** The edge along one flap: from its first tear by its tip to its second. */
  private List<MmPoint> edge(Flap flap) {
    List<MmPoint> edge = new ArrayList<>();
    int steps = flap.rim().length - 1;
    double tip = 0.5 + flap.lean() * 0.3;
    for (int i = 0; i < steps; i++) {
      double t = i / (double) steps;
      double angle = flap.from() + t * (flap.to() - flap.from());
      double rise = t < tip ? t / tip : (1 - t) / (1 - tip);
      double fold = radius * (1 + flap.rim()[i]);
      edge.add(polar(angle, fold * (1 - flap.closing() * rise)));
    }
    return edge;
  }

  /** The fold of a flap along the shaft's circle. */
  public List<MmPoint> fold(Flap flap) {
    List<MmPoint> fold = new ArrayList<>();
    int steps = flap.rim().length - 1;
    for (int i = 0; i <= steps; i++) {
      double angle = flap.from() + i / (double) steps * (flap.to() - flap.from());
      fold.add(polar(angle, radius * (1 + flap.rim()[i])));
    }
    return fold;
  }

  /** A place at an angle and a distance from the axis. */
  public static MmPoint polar(double angle, double distance) {
    return new MmPoint(distance * Math.cos(angle), distance * Math.sin(angle));
  }

  /** Share of the shaft's disc that is open, without tears and slits. */
  public double openShare() {
    return Math.abs(area()) / (Math.PI * radius * radius);
  }

  /** Centroid of the opening, without tears and slits. */
  public MmPoint openingCentroid() {
    List<MmPoint> edge = opening();
    double x = 0;
    double y = 0;
    for (int i = 0; i < edge.size(); i++) {
      MmPoint a = edge.get(i);
      MmPoint b = edge.get((i + 1) % edge.size());
      double cross = a.x() * b.y() - b.x() * a.y();
      x += (a.x() + b.x()) * cross;
      y += (a.y() + b.y()) * cross;
    }
    double six = 6 * area();
    return new MmPoint(x / six, y / six);
  }

  private double area() {
    List<MmPoint> edge = opening();
    double twice = 0;
    for (int i = 0; i < edge.size(); i++) {
      MmPoint a = edge.get(i);
      MmPoint b = edge.get((i + 1) % edge.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }
}
