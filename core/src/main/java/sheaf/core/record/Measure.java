package sheaf.core.record;

import java.util.Optional;

/**
 * Something measured on the bow when it came and when it went.
 *
 * @param key the name in JSON: {@code draw_length}
 * @param label what a person calls it
 * @param found as the bow came; empty when it was not measured, which is never a zero
 * @param left as the bow went; empty when it was not measured
 */
public record Measure(String key, String label, Optional<Taken> found, Optional<Taken> left) {

  /** Throws when the label is empty or longer than {@value BowRecord#LONGEST_LABEL} characters. */
  public Measure {
    BowRecord.checked(label, BowRecord.LONGEST_LABEL);
  }

  /** Something that nobody measured. */
  public static Measure blank(String key, String label) {
    return new Measure(key, label, Optional.empty(), Optional.empty());
  }
}
