package sheaf.forms;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a finished card says besides the record. Its units are those of the record's own sheets.
 *
 * @param form what it is for
 * @param paper printed on
 * @param printed the day of printing
 * @param shop who made the card
 * @param recordLink opens the customer's record; a secret, so only the card's code holds it
 */
public record CardDetails(
    CardForm form, CardPaper paper, LocalDate printed, Shop shop, Optional<String> recordLink) {}
