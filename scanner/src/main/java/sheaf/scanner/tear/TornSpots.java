package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.opencv.Mats;

/** Connected torn spots on a sheet, and tears that may have made them. */
final class TornSpots {

  /** Torn cells that lie this near belong together, in millimetres: print hides what is between. */
  private static final double BRIDGE = 1.8;

  /** Smaller spots are dust and fibres, in square millimetres. */
  private static final double SMALLEST = 1.5;

  private TornSpots() {}

  /**
   * A spot's cells.
   *
   * @param xs of their middles in millimetres
   * @param ys the same, down
   */
  record Spot(double[] xs, double[] ys) {

    /** A single place, in millimetres. */
    static Spot at(double x, double y) {
      return new Spot(new double[] {x}, new double[] {y});
    }

    /** Its area in square millimetres. */
    double area() {
      return xs.length / (TornMap.PER_MM * TornMap.PER_MM);
    }

    /** The tear that ends where the spot does. */
    Capsule along(double radius) {
      double meanX = mean(xs);
      double meanY = mean(ys);
      double xx = 0;
      double xy = 0;
      double yy = 0;
      for (int i = 0; i < xs.length; i++) {
        xx += (xs[i] - meanX) * (xs[i] - meanX);
        xy += (xs[i] - meanX) * (ys[i] - meanY);
        yy += (ys[i] - meanY) * (ys[i] - meanY);
      }
      double angle = Math.atan2(2 * xy, xx - yy) / 2;
      double least = 0;
      double most = 0;
      for (int i = 0; i < xs.length; i++) {
        double along = (xs[i] - meanX) * Math.cos(angle) + (ys[i] - meanY) * Math.sin(angle);
        least = Math.min(least, along);
        most = Math.max(most, along);
      }
      double from = Math.min(0, least + radius);
      double to = Math.max(0, most - radius);
      return new Capsule(
          meanX + from * Math.cos(angle),
          meanY + from * Math.sin(angle),
          meanX + to * Math.cos(angle),
          meanY + to * Math.sin(angle),
          radius);
    }

    /** Whether most of it lies nearer to one zone than to any other. */
    boolean isOf(Zone zone, List<Zone> all) {
      long own =
          IntStream.range(0, xs.length)
              .mapToObj(i -> new MmPoint(xs[i], ys[i]))
              .filter(at -> all.stream().allMatch(z -> away(zone, at) <= away(z, at)))
              .count();
      return 2 * own > xs.length;
    }

    private static double away(Zone zone, MmPoint at) {
      MmRect rect = zone.rect();
      double right = Math.max(rect.x() - at.x(), at.x() - rect.right());
      double down = Math.max(rect.y() - at.y(), at.y() - rect.bottom());
      return Math.hypot(Math.max(0, right), Math.max(0, down));
    }

    private static double mean(double[] values) {
      return Arrays.stream(values).average().orElseThrow();
    }
  }

  /** The spots of a part of the sheet, the largest first. */
  static List<Spot> in(MmRect room, TornMap map, Seeds.Kind kind) {
    int left = Math.max(0, TornMap.cell(room.x()));
    int top = Math.max(0, TornMap.cell(room.y()));
    int columns = Math.min(map.width(), TornMap.cell(room.right())) - left;
    int rows = Math.min(map.height(), TornMap.cell(room.bottom())) - top;
    byte[] torn = new byte[rows * columns];
    for (int i = 0; i < torn.length; i++) {
      int sort = map.sort(left + i % columns, top + i / columns);
      torn[i] = (byte) (TornMap.isTorn(sort, kind) ? 255 : 0);
    }
    try (Mats mats = new Mats()) {
      Mat mask = mats.own(new Mat(rows, columns, CvType.CV_8U));
      mask.put(0, 0, torn);
      int bridge = (int) Math.round(BRIDGE * TornMap.PER_MM) | 1;
      Imgproc.morphologyEx(mask, mask, Imgproc.MORPH_CLOSE, mats.disc(bridge));
      Mat labels = mats.mat();
      int count = Imgproc.connectedComponents(mask, labels);
      int[] numbers = new int[torn.length];
      labels.get(0, 0, numbers);
      return spots(torn, numbers, count, left, top, columns);
    }
  }

  private static List<Spot> spots(
      byte[] torn, int[] numbers, int count, int left, int top, int columns) {
    List<List<double[]>> cells = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      cells.add(new ArrayList<>());
    }
    for (int i = 0; i < torn.length; i++) {
      if (torn[i] != 0) {
        double x = TornMap.middle(left + i % columns);
        double y = TornMap.middle(top + i / columns);
        cells.get(numbers[i]).add(new double[] {x, y});
      }
    }
    return cells.stream()
        .filter(spot -> spot.size() > SMALLEST * TornMap.PER_MM * TornMap.PER_MM)
        .map(
            spot ->
                new Spot(
                    spot.stream().mapToDouble(at -> at[0]).toArray(),
                    spot.stream().mapToDouble(at -> at[1]).toArray()))
        .sorted(Comparator.comparingDouble(Spot::area).reversed())
        .toList();
  }
}
