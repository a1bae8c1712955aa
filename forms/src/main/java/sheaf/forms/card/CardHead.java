package sheaf.forms.card;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What stands at the head of a card besides the record.
 *
 * @param title what kind of card it is
 * @param shop who made it, if that is known
 * @param printed when
 * @param code what the record's code holds
 * @param codeCaption what that code opens, in words
 */
public record CardHead(
    String title, Optional<String> shop, LocalDate printed, String code, String codeCaption) {}
