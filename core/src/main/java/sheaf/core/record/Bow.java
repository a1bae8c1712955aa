package sheaf.core.record;

import java.util.List;
import java.util.Optional;

/**
 * A bow in general words.
 *
 * @param words such as {@code 32 in compound}; at most {@value BowRecord#LONGEST_NAME} characters
 * @param traits what tells it, in the order of the bench card
 */
public record Bow(Optional<String> words, List<Trait> traits) {

  /** Tidies the words and copies the list. */
  public Bow {
    words = BowRecord.name(words);
    traits = List.copyOf(traits);
  }
}
