package sheaf.scanner.tear;

/**
 * An end's place as two estimators tell it that know nothing of each other.
 *
 * @param net what the net said
 * @param fit what the cells and slits said
 */
record TwoPlaces(EndMap.End net, TearFit.End fit) {

  /** True errors over the net's and the fit's stated spreads, as measured on made tears. */
  private static final double NET = 1;

  private static final double FIT = 1.6;

  /** Less error than this is never stated, in millimetres. */
  private static final double LEAST = 0.3;

  /** How far apart both say it is, in millimetres. */
  double apart() {
    return Math.hypot(net.x() - fit.x(), net.y() - fit.y());
  }

  /** The mean of both, weighed by how sure each is; unsure where they differ. */
  TearFit.End mean() {
    double one = 1 / Math.pow(Math.max(LEAST, NET * net.spread()), 2);
    double two = 1 / Math.pow(Math.max(LEAST, FIT * fit.spread()), 2);
    double share = one / (one + two);
    double between = share * (1 - share) * apart() * apart();
    return new TearFit.End(
        share * net.x() + (1 - share) * fit.x(),
        share * net.y() + (1 - share) * fit.y(),
        Math.sqrt(1 / (one + two) + between));
  }
}
