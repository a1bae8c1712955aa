package sheaf.core.record;

import java.util.Locale;

/**
 * What the intake inspection said of a part.
 *
 * @param key the name in JSON: {@code limbs}
 * @param label what a person calls it
 * @param finding what was found
 */
public record Inspected(String key, String label, Finding finding) {

  /** Throws when the label is empty or longer than {@value BowRecord#LONGEST_LABEL} characters. */
  public Inspected {
    BowRecord.checked(label, BowRecord.LONGEST_LABEL);
  }

  /** What was found. */
  public enum Finding {
    /** It was surely ticked as sound. */
    SOUND,
    /** It was surely ticked as not sound: do not shoot. */
    NOT_SOUND,
    /** Its row was marked, but what it says is not sure: do not shoot before somebody looked. */
    DOUBTFUL,
    /** Its row was left blank. */
    BLANK;

    /** The name in JSON. */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Whether the bow must not be shot because of it. */
  public boolean forbidsShooting() {
    return finding == Finding.NOT_SOUND || finding == Finding.DOUBTFUL;
  }
}
