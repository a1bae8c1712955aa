package sheaf.samples.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * The hole that an arrow's point tears into paper, in true millimetres from the shaft's axis.
 *
 * <p>A conical point splits the paper along a few radial tears; the flaps between them fold back on
 * the shaft's circle and close again more or less when the shaft is drawn out. So the opening is
 * the ragged figure between the flaps' edges, not the shaft's disc.
 *
 * @param radius of the shaft
 * @param flaps around the axis, in order of angle
 * @param tears between the flaps
 * @param slits cut by blades; none for a field point
 */
public record TornHole(double radius, List<Flap> flaps, List<Cut> tears, List<Cut> slits) {

  /** Least share of the shaft's disc that stays open. */
  public static final double LEAST_OPEN = 0.35;

  /** Above this share a hole would be punched, not torn. */
  public static final double MOST_OPEN = 0.80;

  /** Copies the lists. */
  public TornHole {
    flaps = List.copyOf(flaps);
    tears = List.copyOf(tears);
    slits = List.copyOf(slits);
  }

  /** A field point's hole. */
  public static TornHole fieldPoint(double radius, RandomGenerator random) {
    return new Tearing(radius, random).fieldPoint();
  }

  /**
   * A broadhead's hole: a torn hub and a slit for each blade.
   *
   * @param cut twice the distance from the axis to the end of the longest slit
   */
  public static TornHole broadhead(double radius, int blades, double cut, RandomGenerator random) {
    return new Tearing(radius, random).broadhead(blades, cut);
  }

  /**
   * This hole beside an older one: a tear runs across the paper that is left between them.
   *
   * @param neighbour from this hole's axis to the other's
   */
  public TornHole givingWay(MmVector neighbour, RandomGenerator random) {
    List<Cut> more = new ArrayList<>(tears);
    double angle = Math.atan2(neighbour.dy(), neighbour.dx()) + random.nextGaussian() * 0.25;
    double reach = Math.max(1.1 * radius, neighbour.length() - 0.8 * radius);
    more.add(new Tearing(radius, random).tear(angle, reach));
    return new TornHole(radius, flaps, more, slits);
  }

  /** The edge of the opening around the shaft, without tears and slits, in order of angle. */
  public List<MmPoint> opening() {
    List<MmPoint> edge = new ArrayList<>();
    for (Flap flap : flaps) {
      for (int i = 0; i < Flap.STEPS; i++) {
        edge.add(polar(flap.angle(i / (double) Flap.STEPS), radius * flap.edge(i)));
      }
    }
    return edge;
  }

  /** A place at an angle and a distance from the axis. */
  static MmPoint polar(double angle, double distance) {
    return new MmPoint(distance * Math.cos(angle), distance * Math.sin(angle));
  }

  /** Share of the shaft's disc that is open, without tears and slits. */
  public double openShare() {
    return area(opening()) / (Math.PI * radius * radius);
  }

  /** Centroid of the opening, without tears and slits. */
  public MmPoint openingCentroid() {
    List<MmPoint> edge = opening();
    double x = 0;
    double y = 0;
    for (int i = 0; i < edge.size(); i++) {
      MmPoint a = edge.get(i);
      MmPoint b = edge.get((i + 1) % edge.size());
      double cross = cross(a, b);
      x += (a.x() + b.x()) * cross;
      y += (a.y() + b.y()) * cross;
    }
    double six = 6 * area(edge);
    return new MmPoint(x / six, y / six);
  }

  private static double area(List<MmPoint> edge) {
    double twice = 0;
    for (int i = 0; i < edge.size(); i++) {
      twice += cross(edge.get(i), edge.get((i + 1) % edge.size()));
    }
    return twice / 2;
  }

  private static double cross(MmPoint a, MmPoint b) {
    return a.x() * b.y() - b.x() * a.y();
  }
}
