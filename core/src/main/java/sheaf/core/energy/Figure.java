package sheaf.core.energy;

/**
 * A number computed from what was measured.
 *
 * @param key the name in JSON and CSV: {@code kinetic_energy}
 * @param label what a person calls it
 * @param value finite
 * @param decimals that are worth telling
 * @param unit its symbol; empty where it has none
 */
public record Figure(String key, String label, double value, int decimals, String unit) {

  /** Throws when the value is not finite. */
  public Figure {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(label + " must be finite: " + value);
    }
  }
}
