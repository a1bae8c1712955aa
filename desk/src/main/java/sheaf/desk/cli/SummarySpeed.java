package sheaf.desk.cli;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntSupplier;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.JobSummary;
import sheaf.core.result.LineResult;
import sheaf.core.result.LineVerdict;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.Planner;
import sheaf.core.tune.ShopPrior;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/**
 * How many jobs a second are summed up on one core, by the processor's time: from readings in
 * memory to all numbers and claims, and besides to sentences, record and plan. The readings are
 * those of a job in a store.
 *
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.desk.cli.SummarySpeed demo-out/home J452V-V4909-H}
 */
public final class SummarySpeed {

  private static final int ROUNDS = 7;
  private static final int JOBS = 2_000;
  private static final double NANOSECONDS = 1e9;

  private SummarySpeed() {}

  /** Prints the median of the rounds after the first ones, and the slowest of them. */
  public static void main(String[] arguments) {
    JobId job = JobId.parse(arguments[1]).orElseThrow();
    List<PageReading> readings;
    StorePlace home = StorePlace.in(new HomeFolder(Path.of(arguments[0])));
    try (Store store = Store.openExisting(home, Clock.systemUTC()).orElseThrow()) {
      readings = store.readings(job);
    }
    report("results", readings.size(), () -> results(JobSummary.of(job, readings)));
    report("with record, sentences and plan", readings.size(), () -> all(job, readings));
  }

  private static void report(String what, int sheets, IntSupplier work) {
    double[] each = new double[ROUNDS];
    long sum = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long start = cpu();
      for (int i = 0; i < JOBS; i++) {
        sum += work.getAsInt();
      }
      each[round] = JOBS * NANOSECONDS / (cpu() - start);
    }
    double[] warm = Arrays.copyOfRange(each, ROUNDS / 2, ROUNDS);
    Arrays.sort(warm);
    System.out.printf(
        Locale.ROOT,
        "%s of %d sheets: median %.0f jobs a second, slowest round %.0f, first %.0f (sum %d)%n",
        what,
        sheets,
        warm[warm.length / 2],
        warm[0],
        each[0],
        sum);
  }

  /** Processor time of this thread, which other work on the machine does not lengthen much. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** All claims of a job; their sum keeps any of it from being left out. */
  private static int results(JobSummary summary) {
    int sum = 0;
    for (PairResult pair : summary.pairs()) {
      sum += pair.equivalence().map(Enum::ordinal).orElse(0);
    }
    for (LineResult line : summary.lines()) {
      sum += line.drift().map(drift -> drift.drifts().ordinal()).orElse(0);
    }
    for (GroupResult group : summary.groups()) {
      sum += group.spread().isPresent() ? 1 : 0;
      sum += group.flyer().isPresent() ? 1 : 0;
    }
    return sum;
  }

  private static int all(JobId job, List<PageReading> readings) {
    JobSummary summary = JobSummary.of(job, readings);
    BowRecord record = RecordOfSheets.of(summary, Optional.empty());
    StringBuilder text = new StringBuilder();
    record.last().pairs().forEach(pair -> text.append(Verdict.of(pair)));
    summary.lines().forEach(line -> text.append(LineVerdict.of(line)));
    record.last().groups().forEach(group -> text.append(GroupVerdict.sentences(group)));
    BowSetup setup = BowSetup.of(record, Optional.empty());
    text.append(Planner.plan(record.last(), setup, ShopPrior.NONE).remarks());
    return text.length();
  }
}
