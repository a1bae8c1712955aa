package sheaf.forms;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a finished card says besides the job's results. Its units are those of the job's own sheets.
 *
 * @param paper printed on
 * @param printed the day of printing
 * @param shop who made the card; blank counts as empty
 * @param recordLink opens the customer's record; a secret, so only the card's code holds it
 */
public record CardDetails(
    CardPaper paper, LocalDate printed, Optional<String> shop, Optional<String> recordLink) {

  /** Tidies the shop's name. */
  public CardDetails {
    shop =
        shop.map(name -> name.replaceAll("[\\s\\p{Cntrl}]+", " ").strip())
            .filter(name -> !name.isEmpty());
  }
}
