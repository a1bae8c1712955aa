package sheaf.forms.card;

import java.time.LocalDate;
import java.util.Optional;
import sheaf.core.job.JobId;

/**
 * What stands at the head of a card.
 *
 * @param job whose card it is
 * @param shop who made it, if that is known
 * @param printed when
 * @param code what the card's code holds
 * @param codeCaption what the code opens, in words
 */
public record CardHead(
    JobId job, Optional<String> shop, LocalDate printed, String code, String codeCaption) {}
