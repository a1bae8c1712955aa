package sheaf.scanner.picture;

import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Carries the reason why a file or a page of it is no picture, up to where pages are refused. */
public final class UnreadableException extends Exception {

  private static final long serialVersionUID = 1;

  private final transient Reason reason;

  /** With the reason to give. */
  public UnreadableException(ReasonCode code, String message) {
    super(message);
    this.reason = Reason.of(code, message);
  }

  /** Why. */
  public Reason reason() {
    return reason;
  }
}
