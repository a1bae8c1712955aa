package sheaf.desk.report;

import java.util.Locale;
import java.util.Optional;
import sheaf.core.group.Group;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmVector;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;

/** What a job's papers came to. */
public final class JobReport {

  private JobReport() {}

  /**
   * The report: cautions first, then the tears, a paragraph for each other sheet that was shot at,
   * then what to do next.
   *
   * @param job with at least one sheet
   * @param home options that the next command needs to find the job, such as {@code --home x}; or
   *     empty
   * @param width of a line, in characters
   * @return lines, each with its end
   */
  public static String of(JobSummary job, String home, int width) {
    StringBuilder text = new StringBuilder("Job " + job.job().spoken() + "\n");
    if (!job.notSound().isEmpty()) {
      text.append(
          Text.hanging(
              "  ",
              "DO NOT SHOOT this bow. Not sound: " + String.join(", ", job.notSound()) + ".",
              width));
    }
    text.append(TearText.of(job, width));
    job.pairs().forEach(pair -> text.append(pair(pair, width)));
    job.lines().forEach(line -> text.append(TargetText.of(line, width)));
    job.groups().forEach(group -> text.append(TargetText.of(group, width)));
    if (job.pairs().isEmpty()) {
      text.append(Text.hanging("  ", "No pair sheet has been read yet.", width));
    }
    text.append(next(job, home, width));
    return text.toString();
  }

  private static String pair(PairResult pair, int width) {
    String shots = shots(pair.field(), "field point") + ", " + shots(pair.broadhead(), "broadhead");
    return Text.sheet(pair.sheet(), pair.distance(), shots, pair.state(), width)
        + pair.offset()
            .map(o -> Text.hanging("    Offset ", offset(o.shift(), pair.offsetMinutes()), width))
            .orElse("")
        + Text.hanging("    ", Verdict.of(pair), width);
  }

  private static String shots(Optional<Group> group, String head) {
    return Text.count(group.map(Group::size).orElse(0), head);
  }

  /** Broadheads minus field points: its length in each unit, then its parts. */
  static String offset(MmVector shift, Optional<Double> minutes) {
    return "%s mm = %s%s (%s)"
        .formatted(
            Text.tenths(shift.length()),
            Inches.decimal(shift.length()),
            minutes.map(m -> String.format(Locale.ROOT, " = %.1f MOA", m)).orElse(""),
            Text.parts(shift));
  }

  private static String next(JobSummary job, String home, int width) {
    String id = job.job().spoken();
    String doubts =
        job.hasDoubts()
            ? Text.hanging(
                "  ",
                "Settle the doubts named above first: "
                    + ("sheaf confirm " + id + " " + home).strip()
                    + " asks about each and shows its place.",
                width)
            : "";
    String card = "  Next: sheaf card " + id + " -o " + id + ".pdf";
    return doubts + (card + " " + home).stripTrailing() + "\n";
  }
}
