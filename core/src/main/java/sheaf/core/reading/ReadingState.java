package sheaf.core.reading;

import java.util.Locale;

/** How a page's reading ended. */
public enum ReadingState {
  /** Everything is sure. */
  READ,
  /** Read, but a person must look at the doubtful items. */
  CHECK,
  /** Not read; the reasons say what to do. */
  REFUSED;

  /** The name in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
