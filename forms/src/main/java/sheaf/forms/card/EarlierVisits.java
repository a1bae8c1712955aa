package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;
import sheaf.core.result.Verdict;

/** What a record tells of the visits before the last: a line each, the latest first. */
final class EarlierVisits {

  private EarlierVisits() {}

  static List<String> of(BowRecord record) {
    List<String> lines = new ArrayList<>();
    for (int i = record.visits().size() - 2; i >= 0; i--) {
      lines.add(line(record.visits().get(i)));
    }
    return lines;
  }

  private static String line(Visit visit) {
    String day = visit.day().map(CardWords::date).orElse("Day not known");
    String result = visit.pairAsLeft().map(pair -> " " + Verdict.of(pair)).orElse("");
    return day + ", job " + visit.job().spoken() + "." + result;
  }
}
