package sheaf.scanner.tear;

/** Goes through the cells in and around a tear, and says where on it each lies. */
final class TearCells {

  /** Takes a cell: its part and ring as {@link TearOdds#index} counts them, sort included. */
  @FunctionalInterface
  interface Visitor {
    void cell(int index);
  }

  private TearCells() {}

  /**
   * Visits all cells up to the outermost ring that print does not hide.
   *
   * @param stride 1 for every cell, 2 for every second one across and down
   */
  static void visit(TornMap map, Capsule tear, int stride, Visitor visitor) {
    double length = tear.length();
    double ux = length == 0 ? 1 : (tear.tailX() - tear.pointX()) / length;
    double uy = length == 0 ? 0 : (tear.tailY() - tear.pointY()) / length;
    double reach = tear.radius() + TearOdds.OUTERMOST;
    int top = TornMap.cell(Math.min(tear.pointY(), tear.tailY()) - reach);
    int bottom = TornMap.cell(Math.max(tear.pointY(), tear.tailY()) + reach);
    int left = TornMap.cell(Math.min(tear.pointX(), tear.tailX()) - reach);
    int right = TornMap.cell(Math.max(tear.pointX(), tear.tailX()) + reach);
    for (int row = Math.max(0, top); row <= Math.min(map.height() - 1, bottom); row += stride) {
      double y = TornMap.middle(row) - tear.pointY();
      int first = Math.max(Math.max(0, left), first(tear, ux, uy, reach, y));
      int last = Math.min(Math.min(map.width() - 1, right), last(tear, ux, uy, reach, y));
      for (int column = first; column <= last; column += stride) {
        int sort = map.sort(column, row);
        if (sort != TornMap.HIDDEN) {
          double x = TornMap.middle(column) - tear.pointX();
          double along = x * ux + y * uy;
          double aside = Math.abs(y * ux - x * uy);
          double beyond = Math.max(-along, along - length);
          double distance = beyond > 0 ? Math.sqrt(beyond * beyond + aside * aside) : aside;
          if (distance < reach) {
            TearOdds.Part part =
                along >= length
                    ? TearOdds.Part.TAIL
                    : along <= 0 ? TearOdds.Part.POINT : TearOdds.Part.WAY;
            visitor.cell(TearOdds.index(part, TearOdds.ring(distance - tear.radius()), sort));
          }
        }
      }
    }
  }

  /** The first column of a row that lies in the strip around the way. */
  private static int first(Capsule tear, double ux, double uy, double reach, double y) {
    return uy == 0 ? 0 : TornMap.cell(tear.pointX() + (y * ux - reach * Math.signum(uy)) / uy);
  }

  private static int last(Capsule tear, double ux, double uy, double reach, double y) {
    return uy == 0
        ? Integer.MAX_VALUE
        : TornMap.cell(tear.pointX() + (y * ux + reach * Math.signum(uy)) / uy);
  }
}
