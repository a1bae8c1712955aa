package sheaf.scanner;

import java.util.Optional;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** What is to be said of the size at which a sheet was printed. */
final class PrintSize {

  /** A print scale this far from 1 is worth telling the shop. */
  private static final double WORTH_SAYING = 0.005;

  /**
   * Paper transport makes a print uneven by up to half a percent. More than this was done by
   * software: either before printing, and then the holes are to be corrected for it, or after
   * scanning, and then they are not; the picture does not tell which.
   */
  private static final double UNEVEN = 0.02;

  private PrintSize() {}

  static Optional<Reason> worthSaying(PrintScale scale) {
    if (Math.abs(scale.x() / scale.y() - 1) > UNEVEN) {
      return Optional.of(uneven(scale));
    }
    return Math.abs(scale.mean() - 1) > WORTH_SAYING
        ? Optional.of(offSize(scale))
        : Optional.empty();
  }

  private static Reason offSize(PrintScale scale) {
    return Reason.of(
        ReasonCode.PRINT_SCALE,
        "The sheet was printed at %.1f %% of its size; the results are corrected for it. Print the next ones at 100 %%."
            .formatted(100 * scale.mean()));
  }

  private static Reason uneven(PrintScale scale) {
    return Reason.of(
        ReasonCode.SCALE_UNEVEN,
        "The sheet seems to be %.1f %% of its width and %.1f %% of its height: measure its printed ruler; if that is right, the scan was stretched: scan again with no fitting to a page size."
            .formatted(100 * scale.x(), 100 * scale.y()));
  }
}
