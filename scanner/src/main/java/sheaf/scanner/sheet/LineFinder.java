package sheaf.scanner.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/** Finds printed lines in a picture near where they are expected; looks at nothing else of it. */
final class LineFinder {

  /** From one sample across a line to the next, in millimetres. */
  private static final double FINE = 0.1;

  /** Looks across a line side by side, and how far they are apart along it, in millimetres. */
  private static final int LOOKS = 7;

  private static final double BESIDE = 0.55;

  /** White paper is looked for this far from the line's edges, in millimetres. */
  private static final double NEAR = 0.45;

  private static final double FAR = 1.1;

  /** A line is darker than the paper beside it by at least this share. */
  private static final double DARKER = 0.06;

  /** A second line that is this share as dark makes it doubtful which is meant. */
  private static final double RIVAL = 0.6;

  /** Two dark places nearer than this are one line, in millimetres. */
  private static final double SAME = 0.7;

  private final Mat picture;
  private final PageMap map;
  private final int steps;
  private final int columns;

  private LineFinder(Mat picture, PageMap map, double within) {
    this.picture = picture;
    this.map = map;
    this.steps = (int) Math.round(within / FINE);
    this.columns = 2 * (steps + (int) Math.ceil((FAR + 1) / FINE)) + 1;
  }

  /**
   * Looks for lines.
   *
   * @param picture grey or colour
   * @param map by which they are expected
   * @param within so many millimetres of there
   */
  static List<Sighting> find(
      Mat picture, PageMap map, List<PrintedLines.Place> places, double within) {
    return new LineFinder(picture, map, within).find(places);
  }

  private List<Sighting> find(List<PrintedLines.Place> places) {
    try (Mats mats = new Mats()) {
      Mat where = mats.own(new Mat(places.size() * LOOKS, columns, CvType.CV_32FC2));
      List<Axis> axes = places.stream().map(this::axis).toList();
      float[] row = new float[2 * columns];
      for (int i = 0; i < axes.size(); i++) {
        for (int look = 0; look < LOOKS; look++) {
          axes.get(i).fill(row, (look - LOOKS / 2) * BESIDE);
          where.put(i * LOOKS + look, 0, row);
        }
      }
      Mat looked = mats.mat();
      Imgproc.remap(picture, looked, where, mats.mat(), Imgproc.INTER_LINEAR);
      if (looked.channels() == 3) {
        Imgproc.cvtColor(looked, looked, Imgproc.COLOR_BGR2GRAY);
      }
      byte[] grey = new byte[(int) looked.total()];
      looked.get(0, 0, grey);
      List<Sighting> seen = new ArrayList<>();
      for (int i = 0; i < axes.size(); i++) {
        axes.get(i).sighting(profile(grey, i)).ifPresent(seen::add);
      }
      return seen;
    }
  }

  /** The middle of the looks side by side: what crosses the line or is torn is outvoted. */
  private double[] profile(byte[] grey, int place) {
    double[] profile = new double[columns];
    int[] looks = new int[LOOKS];
    for (int c = 0; c < columns; c++) {
      for (int look = 0; look < LOOKS; look++) {
        looks[look] = grey[(place * LOOKS + look) * columns + c] & 0xFF;
      }
      Arrays.sort(looks);
      int middle = LOOKS / 2;
      profile[c] = (looks[middle - 1] + looks[middle] + looks[middle + 1]) / 3.0;
    }
    return profile;
  }

  private Axis axis(PrintedLines.Place place) {
    Point right = map.right(place.at());
    Point down = map.down(place.at());
    Point along =
        new Point(
            right.x * place.alongX() + down.x * place.alongY(),
            right.y * place.alongX() + down.y * place.alongY());
    // Across the line as seen; a slant or curl may have sheared it against the line.
    double length = Math.hypot(along.x, along.y);
    double nx = -along.y / length;
    double ny = along.x / length;
    double pixelsPerMm =
        nx * (-right.x * place.alongY() + down.x * place.alongX())
            + ny * (-right.y * place.alongY() + down.y * place.alongX());
    return new Axis(place, map.toPixel(place.at()), along, nx, ny, pixelsPerMm);
  }

  /** A look across one place of a line, in the picture. */
  private final class Axis {

    private final PrintedLines.Place place;
    private final Point expected;
    private final Point along;
    private final double nx;
    private final double ny;
    private final double pixelsPerMm;

    Axis(
        PrintedLines.Place place,
        Point expected,
        Point along,
        double nx,
        double ny,
        double pixelsPerMm) {
      this.place = place;
      this.expected = expected;
      this.along = along;
      this.nx = nx;
      this.ny = ny;
      this.pixelsPerMm = pixelsPerMm;
    }

    void fill(float[] row, double beside) {
      double x = expected.x + along.x * beside;
      double y = expected.y + along.y * beside;
      for (int c = 0; c < columns; c++) {
        double off = (c - columns / 2) * FINE * pixelsPerMm;
        row[2 * c] = (float) (x + off * nx);
        row[2 * c + 1] = (float) (y + off * ny);
      }
    }

    Optional<Sighting> sighting(double[] profile) {
      double[] dark = new double[2 * steps + 1];
      int best = 0;
      for (int i = 0; i < dark.length; i++) {
        dark[i] = darkness(profile, columns / 2 - steps + i);
        best = dark[i] > dark[best] ? i : best;
      }
      if (dark[best] < DARKER || best == 0 || best == dark.length - 1 || rivalled(dark, best)) {
        return Optional.empty();
      }
      double bent = dark[best - 1] - 2 * dark[best] + dark[best + 1];
      double part = bent < 0 ? 0.5 * (dark[best - 1] - dark[best + 1]) / bent : 0;
      double off = (best - steps + part) * FINE * pixelsPerMm;
      Point seen = new Point(expected.x + off * nx, expected.y + off * ny);
      return Optional.of(
          new Sighting(place.at(), seen, nx, ny, Math.abs(pixelsPerMm), place.part()));
    }

    private boolean rivalled(double[] dark, int best) {
      for (int i = 0; i < dark.length; i++) {
        boolean apart = Math.abs(i - best) * FINE > SAME + place.width();
        if (apart && dark[i] > RIVAL * dark[best]) {
          return true;
        }
      }
      return false;
    }

    /** How much darker a line here would be than the paper on both its sides, as a share. */
    private double darkness(double[] profile, int middle) {
      int half = (int) Math.max(1, Math.round(place.width() / 2 / FINE));
      int near = half + (int) Math.round(NEAR / FINE);
      int far = half + (int) Math.round(FAR / FINE);
      double core = mean(profile, middle - half, middle + half);
      double before = mean(profile, middle - far, middle - near);
      double after = mean(profile, middle + near, middle + far);
      double paper = Math.min(before, after);
      return (paper - core) / Math.max(20, paper);
    }

    private double mean(double[] profile, int from, int to) {
      double sum = 0;
      for (int i = from; i <= to; i++) {
        sum += profile[Math.max(0, Math.min(columns - 1, i))];
      }
      return sum / (to - from + 1);
    }
  }
}
