package sheaf.core.answer;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;

/**
 * One value that a field had, and where it came from.
 *
 * @param label what a person calls the field
 * @param field the value, how sure it was, and whether a machine or a person told it
 * @param when it was told
 * @param sheet the number of the sheet; empty for what was typed in without one
 * @param place where on the sheet it is written, where that is known
 * @param source the file that it was read from; empty for a person
 * @param who told it, where a person did and said who
 * @param why, where a person said that
 */
public record Revision(
    String label,
    FieldReading field,
    Instant when,
    OptionalInt sheet,
    Optional<MmPoint> place,
    Optional<String> source,
    Optional<String> who,
    Optional<String> why) {}
