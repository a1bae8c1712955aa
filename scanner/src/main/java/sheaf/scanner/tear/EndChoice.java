package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Two ends that the net saw in a zone, as one arrow's.
 *
 * @param tail where the tail passed
 * @param point where the point went in
 * @param radius of the shaft in millimetres
 * @param worth how much speaks for both, as log odds
 * @param margin how much less speaks for any other two ends in the zone
 */
record EndChoice(EndMap.End tail, EndMap.End point, double radius, double worth, double margin) {

  /** So many of a zone's likeliest tails are tried with as many points. */
  private static final int MOST = 4;

  /** Around the ends of so many pairs vanes' slits are looked for. */
  private static final int LOOKED_AT = 4;

  /** Weights so chosen on made tears that the right pair is told from the others surest. */
  private static final double ODDS = 0.9;

  private static final double CELLS = 0.004;

  private static final double STARS = 0.13;

  private static final double ASTRAY = 0.01;

  /** Farther astray than this is no worse, in millimetres. */
  private static final double MOST_ASTRAY = 20;

  /** Pairs whose ends lie nearer than this, in millimetres, are the same. */
  static final double SAME = 3;

  /** Nothing else was seen. */
  private static final double SURE = 20;

  /** The tear between both ends. */
  Capsule capsule() {
    return new Capsule(point.x(), point.y(), tail.x(), tail.y(), radius);
  }

  /** Probability of the likelier end. */
  double mostLikely() {
    return Math.max(tail.probability(), point.probability());
  }

  /** Log odds, as the net says, that both ends are one. */
  double bulletOdds() {
    return Math.log(tail.bullet() / (1 - tail.bullet()));
  }

  /** Log odds, as the net says, that there are four vanes and not three. */
  double fourOdds() {
    return Math.log(tail.four() / (1 - tail.four()));
  }

  /** What speaks for a pair before slits are looked for. */
  static EndChoice of(EndMap.End tail, EndMap.End point, double radius, TearFit fit) {
    Capsule way = new Capsule(point.x(), point.y(), tail.x(), tail.y(), radius);
    double astray =
        Math.min(MOST_ASTRAY, tail.astray(point)) + Math.min(MOST_ASTRAY, point.astray(tail));
    double worth = ODDS * (tail.odds() + point.odds()) + CELLS * fit.score(way) - ASTRAY * astray;
    return new EndChoice(tail, point, radius, worth, SURE);
  }

  /** All pairs of the likeliest ends, the likeliest pair first. */
  static List<EndChoice> all(
      List<EndMap.End> tails, List<EndMap.End> points, double radius, TearFit fit) {
    List<EndChoice> pairs = new ArrayList<>();
    for (EndMap.End tail : tails.subList(0, Math.min(MOST, tails.size()))) {
      for (EndMap.End point : points.subList(0, Math.min(MOST, points.size()))) {
        pairs.add(of(tail, point, radius, fit));
      }
    }
    pairs.sort(Comparator.comparingDouble(EndChoice::worth).reversed());
    return pairs;
  }

  /** The likeliest pair once slits have been looked for around the ends of the first ones. */
  static Optional<EndChoice> best(List<EndChoice> pairs, Stars stars) {
    List<EndChoice> looked =
        pairs.stream()
            .limit(LOOKED_AT)
            .map(pair -> pair.plus(STARS * stars.clearer(pair.capsule())))
            .sorted(Comparator.comparingDouble(EndChoice::worth).reversed())
            .toList();
    return looked.stream().findFirst().map(first -> first.against(looked));
  }

  /** How much better the vanes' star at a tear's tail is than the one at its point. */
  @FunctionalInterface
  interface Stars {
    double clearer(Capsule tear);
  }

  private EndChoice plus(double more) {
    return new EndChoice(tail, point, radius, worth + more, margin);
  }

  private EndChoice against(List<EndChoice> others) {
    double rival =
        others.stream()
            .filter(other -> tail.away(other.tail) > SAME || point.away(other.point) > SAME)
            .mapToDouble(EndChoice::worth)
            .max()
            .orElse(worth - SURE);
    return new EndChoice(tail, point, radius, worth, worth - rival);
  }
}
