package sheaf.core.reading;

import java.util.Locale;

/** What was on the front of the arrow. */
public enum Head {
  /** A field point: a round, ragged hole. */
  FIELD,
  /** A broadhead: a hole with a slit for each blade. */
  BROADHEAD,
  /** The hole does not tell. */
  UNKNOWN;

  /** The name in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
