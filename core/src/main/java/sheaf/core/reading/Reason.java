package sheaf.core.reading;

import java.util.Optional;
import sheaf.core.page.MmPoint;

/**
 * Something to be said of a page.
 *
 * @param code for programs
 * @param message for people: what is wrong and what to do
 * @param place where on the page, when it has a place
 */
public record Reason(ReasonCode code, String message, Optional<MmPoint> place) {

  /** A reason without a place. */
  public static Reason of(ReasonCode code, String message) {
    return new Reason(code, message, Optional.empty());
  }

  /** A reason about a place on the page. */
  public static Reason at(ReasonCode code, String message, MmPoint place) {
    return new Reason(code, message, Optional.of(place));
  }
}
