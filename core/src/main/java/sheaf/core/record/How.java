package sheaf.core.record;

import java.util.Locale;

/** How a value came to be known. */
public enum How {
  /** Read from paper by the machine, which was sure. */
  READ,
  /** Read from paper by the machine, which was not sure; nobody has looked yet. */
  DOUBTFUL,
  /** Written on paper by hand; what it says has not been read in yet. */
  WRITTEN,
  /** Typed in by a person. */
  TYPED,
  /** Read from paper and confirmed, or corrected, by a person who looked at it. */
  CONFIRMED;

  /** For people, in a word. */
  public String spoken() {
    return switch (this) {
      case READ -> "read";
      case DOUBTFUL -> "unsure";
      case WRITTEN -> "unread";
      case TYPED -> "typed";
      case CONFIRMED -> "confirmed";
    };
  }

  /** The name in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
