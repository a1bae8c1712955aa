package sheaf.scanner;

import java.util.List;
import java.util.Optional;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;
import sheaf.core.record.Tear;

/**
 * Tears are read on trial: too few sheets have been measured to trust that doubts show whatever is
 * wrong, so a person is asked about each tear.
 */
final class TearTrial {

  private TearTrial() {}

  /**
   * A doubt for each tear and bullet hole that was found.
   *
   * @param scale of the print; empty where it is not known
   */
  static List<Reason> doubts(List<TearReading> found, SheetCode code, Optional<PrintScale> scale) {
    return found.stream()
        .map(tear -> Reason.at(ReasonCode.TEAR_ON_TRIAL, question(tear, code, scale), tear.tail()))
        .toList();
  }

  private static String question(TearReading found, SheetCode code, Optional<PrintScale> scale) {
    Tear tear = new Tear(code.number(), found.zone(), found.pointToTail(scale));
    return tear.isBulletHole()
        ? "Is zone %d right: a bullet hole? Look at the picture.".formatted(tear.zone())
        : "Is zone %d right: a tear of %d mm, tail at %d o'clock? Look at the picture."
            .formatted(tear.zone(), Math.round(tear.pointToTail().length()), tear.clock());
  }
}
