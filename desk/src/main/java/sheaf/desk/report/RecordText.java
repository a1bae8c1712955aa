package sheaf.desk.report;

import java.util.Optional;
import java.util.stream.Collectors;
import sheaf.core.record.BowRecord;
import sheaf.core.record.How;
import sheaf.core.record.Inspected;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.LineVerdict;
import sheaf.core.result.Verdict;

/** A record as plain text: what is known of a job whose papers are not at hand. */
public final class RecordText {

  private RecordText() {}

  /**
   * The last visit of a record.
   *
   * @param origin where the record comes from, in a sentence
   * @param width of a line, in characters
   * @return lines, each with its end
   */
  public static String of(BowRecord record, String origin, int width) {
    Visit visit = record.last();
    StringBuilder text = new StringBuilder("Job " + visit.job().spoken() + "\n");
    text.append(Text.hanging("  ", origin, width));
    if (!visit.notSound().isEmpty()) {
      String parts =
          visit.notSound().stream().map(Inspected::label).collect(Collectors.joining(", "));
      text.append(Text.hanging("  ", "DO NOT SHOOT this bow. Not sound: " + parts + ".", width));
    }
    text.append("Set-up as left\n").append(measures(visit));
    visit.pairAsLeft().ifPresent(pair -> text.append(Text.hanging("  ", Verdict.of(pair), width)));
    if (!visit.line().isEmpty()) {
      text.append(Text.hanging("  ", LineVerdict.of(visit.line()), width));
    }
    visit.groupsAsLeft().forEach(group -> text.append(TargetText.of(group, width)));
    visit.notes().forEach(note -> text.append(Text.hanging("  - ", note, width)));
    if (!visit.written().isEmpty()) {
      text.append(Text.hanging("  - ", "A note by hand, kept as a picture for the card.", width));
    }
    String counts =
        "%s, %s, %s, %s."
            .formatted(
                Text.count(record.visits().size(), "visit"),
                Text.count(visit.changes().size(), "change"),
                Text.count(visit.tears().size(), "tear"),
                Text.count(visit.line().size(), "shot") + " at the line");
    text.append(Text.hanging("  ", "In the record: " + counts, width));
    return text.toString();
  }

  private static String measures(Visit visit) {
    int widest = visit.measures().stream().mapToInt(m -> m.label().length()).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (Measure measure : visit.measures()) {
      String gap = " ".repeat(widest - measure.label().length());
      text.append("  ").append(measure.label()).append(gap).append("  ");
      text.append(answer(measure.left())).append("\n");
    }
    return text.toString();
  }

  private static String answer(Optional<Taken> taken) {
    if (taken.isEmpty()) {
      return "-";
    }
    Taken answer = taken.get();
    return answer.how() == How.WRITTEN
        ? "written by hand: see the sheet"
        : answer.words().orElseThrow() + "  (" + answer.how().label() + ")";
  }
}
