package sheaf.desk.report;

import java.util.List;
import java.util.stream.Collectors;
import sheaf.core.result.Overview;

/** A line for each job: what it is, and what is to be done next. */
public final class JobTable {

  private static final String LINE = "%-13s  %-10s  %-12s  %-22s  %s%n";

  private static final int CUSTOMER = 12;
  private static final int BOW = 22;

  private JobTable() {}

  /** The table with its heading. */
  public static String of(List<Overview> jobs) {
    String head = LINE.formatted("Job", "Day", "Customer", "Bow", "To do");
    return head + jobs.stream().map(JobTable::line).collect(Collectors.joining());
  }

  private static String line(Overview job) {
    return LINE.formatted(
        job.job().spoken(),
        job.day(),
        Text.elide(job.customer().orElse("-"), CUSTOMER),
        Text.elide(job.bow().orElse("-"), BOW),
        toDo(job));
  }

  /** What is to be done next, in words. */
  public static String toDo(Overview job) {
    return switch (job.state()) {
      case DOUBTS -> "look at " + Text.count(job.doubts(), "sheet");
      case SHEETS -> missing(job.missing()) + " missing";
      case CARD -> "print the card";
      case DONE -> "done";
    };
  }

  private static String missing(List<Integer> numbers) {
    String list = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return (numbers.size() == 1 ? "sheet " : "sheets ") + list;
  }
}
