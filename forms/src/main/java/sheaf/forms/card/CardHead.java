package sheaf.forms.card;

import java.time.LocalDate;
import java.util.Optional;
import sheaf.forms.draw.Picture;

/**
 * What stands at the head of a card besides the record.
 *
 * @param title what kind of card it is
 * @param shop the name of who made it, if that is known
 * @param contact how to reach the shop
 * @param logo the shop's picture
 * @param printed when
 * @param code what the record's code holds
 * @param codeCaption what that code opens, in words
 */
public record CardHead(
    String title,
    Optional<String> shop,
    Optional<String> contact,
    Optional<Picture> logo,
    LocalDate printed,
    String code,
    String codeCaption) {

  /** What the logo is called by those who do not see it. */
  String logoWords() {
    return "logo of " + shop.orElse("the shop");
  }
}
