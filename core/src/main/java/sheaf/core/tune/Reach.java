package sheaf.core.tune;

import sheaf.core.group.SamePoint;

/**
 * How far a lever may be moved so that, even if the bow answers as it hardly ever does, the heads
 * do not come to hit much farther apart than at first.
 *
 * @param trials so far, at least one
 * @param bow what they taught
 */
record Reach(Trials trials, BowModel bow) {

  /** So many times as far apart as at first, or as an inch at 20 yd, no move may lead. */
  private static final double FARTHEST = 3;

  /**
   * A lever that this bow was never moved by may do so many times what is usual, whatever earlier
   * bows did: our own assumption.
   */
  private static final double STRONGEST = 5;

  /** What is known of an answer may be off by so many standard deviations. */
  private static final double DEVIATIONS = 3;

  /** The first sheet may show the heads so many standard deviations too far apart: 19 in 20. */
  private static final double FIRST_DEVIATIONS = 2;

  /**
   * The most steps of a lever.
   *
   * @return from the finest part of a step to the step's own limit
   */
  double most(Lever lever) {
    Step step = lever.step();
    double steps = step.finest();
    while (steps + step.finest() <= step.most()
        && worstMm(lever, steps + step.finest()) <= boundMm()) {
      steps += step.finest();
    }
    return steps;
  }

  private double boundMm() {
    Trial first = trials.trials().get(0);
    double deviation = Math.sqrt(bow.scatter().variance() / first.weight());
    double apart = first.offset().length() - FIRST_DEVIATIONS * deviation;
    double least = SamePoint.toleranceAt(Trial.REFERENCE);
    return Math.max(bow.offset().length(), FARTHEST * Math.max(apart, least));
  }

  /** How far apart the heads may be after so many steps the way that is planned, or either way. */
  private double worstMm(Lever lever, double steps) {
    Axis axis = lever.axis();
    double worst = 0;
    for (double way : new double[] {1, -1}) {
      boolean planned = bow.bestSteps(lever) * way > 0;
      if (planned || !bow.response(lever).directionKnown(axis)) {
        worst = Math.max(worst, worstAlong(lever, way * steps));
      }
    }
    return Math.hypot(worst, axis.other().along(bow.offset()));
  }

  private double worstAlong(Lever lever, double steps) {
    Axis axis = lever.axis();
    Response response = bow.response(lever);
    double answer = axis.along(response.perStep());
    double deviations = DEVIATIONS * response.deviation(axis);
    double low = answer - deviations;
    double high = answer + deviations;
    if (!trials.moved().contains(lever)) {
      double strongest = STRONGEST * lever.step().usualMm();
      boolean known = response.directionKnown(axis);
      low = known && answer > 0 ? low : Math.min(low, -strongest);
      high = known && answer < 0 ? high : Math.max(high, strongest);
    }
    double off = axis.along(bow.offset());
    return Math.max(Math.abs(off + steps * low), Math.abs(off + steps * high));
  }
}
