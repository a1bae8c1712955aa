package sheaf.core.layout;

import java.util.Locale;

/** What an aim dot is shot at with. */
public enum Aim {
  /** Arrows with field points. */
  FIELD,
  /** Arrows with broadheads. */
  BROADHEAD,
  /** Both heads. */
  SHARED;

  /** The name in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
