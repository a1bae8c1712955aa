package sheaf.scanner.hole;

/** The mean of weighted places and how far they spread, summed up place by place. */
public final class MeanPlace {

  private double weights;
  private double sumX;
  private double sumY;
  private double squares;

  /** Takes a place in. */
  public void add(double weight, double x, double y) {
    weights += weight;
    sumX += weight * x;
    sumY += weight * y;
    squares += weight * (x * x + y * y);
  }

  /** The mean. */
  public double x() {
    return sumX / weights;
  }

  /** The mean, down. */
  public double y() {
    return sumY / weights;
  }

  /** Standard deviation in each direction. */
  public double spread() {
    double variance = squares / weights - x() * x() - y() * y();
    return Math.sqrt(Math.max(0, variance) / 2);
  }
}
