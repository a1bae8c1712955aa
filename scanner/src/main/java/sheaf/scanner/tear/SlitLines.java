package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.scanner.hole.Grid;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Where the lines of slits meet: vanes cut straight out from the shaft's axis, so the outer parts
 * of the slits point back to it.
 */
final class SlitLines {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** A slit is followed from this share of its length on: nearer in, the torn rim begins. */
  private static final double FROM = 0.42;

  private static final double TO = 0.97;

  private static final int STEPS = 24;

  /** A slit lies at most this far aside of where it was traced, in pixels. */
  private static final int ASIDE = 12;

  /** A slit is held against the paper this far on both sides, in pixels. */
  private static final int BESIDE = 9;

  /** Paper tears this far aside of the straight line, in millimetres: its standard deviation. */
  private static final double CROOKED = 0.45;

  private final Grid tone;
  private final double contrast;

  /**
   * Lines in a map.
   *
   * @param tone 0 where there is paper
   * @param contrast from which a line is seen
   */
  SlitLines(Grid tone, double contrast) {
    this.tone = tone;
    this.contrast = contrast;
  }

  /** A line through a place in a direction of length 1; in pixels. */
  private record Line(double x, double y, double dx, double dy) {}

  /**
   * The axis as the slits tell, drawn to where it is supposed to be.
   *
   * @param supposed its place in millimetres and how sure that is
   */
  TearFit.End meeting(TearFit.End supposed, List<Slit> slits) {
    double weight = 1 / (supposed.spread() * supposed.spread());
    double[] sums = {weight, 0, weight, weight * supposed.x(), weight * supposed.y()};
    for (Slit slit : slits) {
      line(supposed, slit).ifPresent(line -> add(line, sums));
    }
    double determinant = sums[0] * sums[2] - sums[1] * sums[1];
    double x = (sums[3] * sums[2] - sums[4] * sums[1]) / determinant;
    double y = (sums[4] * sums[0] - sums[3] * sums[1]) / determinant;
    double spread = Math.sqrt((sums[0] + sums[2]) / (2 * determinant));
    return new TearFit.End(x, y, spread);
  }

  /** A line says where the axis is across it, and nothing along it. */
  private static void add(Line line, double[] sums) {
    double nx = -line.dy;
    double ny = line.dx;
    double weight = 1 / (CROOKED * CROOKED);
    double off = (nx * (line.x + 0.5) + ny * (line.y + 0.5)) / MM;
    sums[0] += weight * nx * nx;
    sums[1] += weight * nx * ny;
    sums[2] += weight * ny * ny;
    sums[3] += weight * nx * off;
    sums[4] += weight * ny * off;
  }

  /** The straight line along the outer part of a slit; empty when too little of it is seen. */
  private Optional<Line> line(TearFit.End axis, Slit slit) {
    double cx = axis.x() * MM - 0.5;
    double cy = axis.y() * MM - 0.5;
    double ux = Math.cos(slit.angle());
    double uy = Math.sin(slit.angle());
    List<double[]> seen = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double out = slit.length() * (FROM + (TO - FROM) * i / STEPS);
      int best = 0;
      double most = contrast;
      for (int aside = -ASIDE; aside <= ASIDE; aside++) {
        double stands = contrast(cx + out * ux - aside * uy, cy + out * uy + aside * ux, ux, uy);
        if (stands > most) {
          most = stands;
          best = aside;
        }
      }
      if (most > contrast) {
        seen.add(new double[] {out, best});
      }
    }
    return seen.size() < STEPS / 2 ? Optional.empty() : Optional.of(fit(seen, cx, cy, ux, uy));
  }

  private double contrast(double x, double y, double ux, double uy) {
    double here = tone.at(x, y);
    double left = tone.at(x - BESIDE * uy, y + BESIDE * ux);
    double right = tone.at(x + BESIDE * uy, y - BESIDE * ux);
    return Math.max(here - Math.max(left, right), Math.min(left, right) - here);
  }

  /** The line of least squares through what was seen. */
  private static Line fit(List<double[]> seen, double cx, double cy, double ux, double uy) {
    double out = seen.stream().mapToDouble(at -> at[0]).average().orElseThrow();
    double aside = seen.stream().mapToDouble(at -> at[1]).average().orElseThrow();
    double both = seen.stream().mapToDouble(at -> (at[0] - out) * (at[1] - aside)).sum();
    double square = seen.stream().mapToDouble(at -> (at[0] - out) * (at[0] - out)).sum();
    double slope = both / square;
    double norm = Math.hypot(1, slope);
    return new Line(
        cx + out * ux - aside * uy,
        cy + out * uy + aside * ux,
        (ux - slope * uy) / norm,
        (uy + slope * ux) / norm);
  }
}
