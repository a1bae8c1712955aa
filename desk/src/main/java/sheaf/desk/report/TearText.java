package sheaf.desk.report;

import sheaf.core.measure.Inches;
import sheaf.core.page.MmVector;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.record.Tear;
import sheaf.core.result.JobSummary;

/** The tears of a job, a line for each, in the order in which they were shot. */
final class TearText {

  private TearText() {}

  /** Lines, each with its end; empty when no tear sheet has been read. */
  static String of(JobSummary job, int width) {
    StringBuilder text = new StringBuilder();
    for (Tear tear : RecordOfSheets.tears(job)) {
      String head = "Sheet " + tear.sheet() + ", zone " + tear.zone() + ": ";
      text.append(Text.hanging("  ", head + way(tear), width));
    }
    return text.toString();
  }

  /** Where the tail went, as the archer sees the front of the sheet. */
  private static String way(Tear tear) {
    MmVector way = tear.pointToTail();
    return tear.isBulletHole()
        ? "bullet hole"
        : "tail %s mm = %s toward %d o'clock (%s)"
            .formatted(
                Text.tenths(way.length()),
                Inches.decimal(way.length()),
                tear.clock(),
                Text.parts(way));
  }
}
