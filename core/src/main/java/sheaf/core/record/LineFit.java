package sheaf.core.record;

import java.util.List;
import java.util.Optional;

/**
 * The straight line through the shots at a line sheet: impact to the right against distance.
 *
 * <p>Ordinary least squares (any textbook of statistics; for instance the NIST/SEMATECH e-Handbook
 * of Statistical Methods, section 4.1.4.1). Drift that grows with the distance speaks of the rest,
 * a constant offset of the sight (common practice, no published source).
 *
 * @param mmPerMetre drift to the right, in millimetres for each metre of distance
 * @param mmAtZero where the line meets distance zero, in millimetres to the right
 */
public record LineFit(double mmPerMetre, double mmAtZero) {

  /** The fit; empty unless shots were made from two different distances. */
  public static Optional<LineFit> of(List<LineShot> shots) {
    double meanMetres = shots.stream().mapToDouble(LineFit::metres).average().orElse(0);
    double meanMm = shots.stream().mapToDouble(LineShot::rightMm).average().orElse(0);
    double spread = 0;
    double together = 0;
    for (LineShot shot : shots) {
      double metres = metres(shot) - meanMetres;
      spread += metres * metres;
      together += metres * (shot.rightMm() - meanMm);
    }
    if (!severalDistances(shots)) {
      return Optional.empty();
    }
    double slope = together / spread;
    return Optional.of(new LineFit(slope, meanMm - slope * meanMetres));
  }

  /** Where the line is at a distance, in millimetres to the right. */
  public double at(double metres) {
    return mmAtZero + mmPerMetre * metres;
  }

  private static boolean severalDistances(List<LineShot> shots) {
    return shots.stream().mapToDouble(LineFit::metres).distinct().count() > 1;
  }

  private static double metres(LineShot shot) {
    return shot.distance().millimetres() / 1000;
  }
}
