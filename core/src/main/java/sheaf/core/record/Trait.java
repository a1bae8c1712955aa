package sheaf.core.record;

/**
 * Something that tells this bow, or how it is shot: hand, release.
 *
 * @param key the name in JSON: {@code loosed_by}
 * @param label what a person calls it
 * @param answer what it is
 */
public record Trait(String key, String label, Taken answer) {

  /** Throws when the label is empty or longer than {@value BowRecord#LONGEST_LABEL} characters. */
  public Trait {
    BowRecord.checked(label, BowRecord.LONGEST_LABEL);
  }
}
