package sheaf.desk.web;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.layout.SheetKind;
import sheaf.core.picture.TearPicture;
import sheaf.core.reading.PageReading;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.record.Tear;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.JobSummary;
import sheaf.core.result.LineResult;
import sheaf.core.result.LineVerdict;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.desk.report.Found;

/** What one sheet came to, in sentences. */
final class SheetAnswers {

  private static final int ROOM = 60;

  private SheetAnswers() {}

  /** Sentences; none for a sheet that has no result by itself. */
  static List<String> of(PageReading page, JobSummary job) {
    SheetKind kind = page.sheet().orElseThrow().layout().kind();
    return switch (kind) {
      case PAIR -> List.of(Verdict.of(PairResult.of(page)));
      case LINE -> List.of(LineVerdict.of(LineResult.of(page)));
      case GROUP, SIGHT_IN -> GroupVerdict.sentences(GroupResult.of(page));
      case TEAR -> tears(page, job);
      default -> List.of();
    };
  }

  private static List<String> tears(PageReading page, JobSummary job) {
    int number = page.sheet().orElseThrow().number();
    List<String> ways = new ArrayList<>();
    for (Tear tear : RecordOfSheets.tears(job)) {
      if (tear.sheet() == number) {
        ways.add("Zone " + tear.zone() + ": " + TearPicture.way(tear) + ".");
      }
    }
    return ways;
  }

  /** What was found on it. */
  static String found(PageReading page) {
    return Found.on(page, ROOM);
  }
}
