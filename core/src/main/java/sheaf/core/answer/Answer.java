package sheaf.core.answer;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a person said about one thing of a sheet or of a job. Answers are only ever added: a later
 * one about the same thing counts, and the earlier ones stay.
 *
 * @param sheet the number of the sheet; empty for a field of the bench card, whichever sheet that
 *     is and whether it was read or not
 * @param said what was said
 * @param who said it, by initials, where that is known
 * @param when it was said
 * @param why, where a reason was given
 */
public record Answer(
    OptionalInt sheet, Said said, Optional<String> who, Instant when, Optional<String> why) {

  /** Throws for anything but a field's value that names no sheet. */
  public Answer {
    if (sheet.isEmpty() && !(said instanceof Said.Value)) {
      throw new IllegalArgumentException("a place without a sheet is none");
    }
  }
}
