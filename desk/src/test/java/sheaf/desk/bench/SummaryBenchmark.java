package sheaf.desk.bench;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.JobSummary;
import sheaf.core.result.LineVerdict;
import sheaf.core.result.Verdict;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.Planner;
import sheaf.core.tune.ShopPrior;
import sheaf.desk.Pages;

/**
 * How many jobs of six sheets a second are summed up on one core, since a shop's archive is
 * computed again when a formula gets better: from readings in memory to all numbers and claims, and
 * besides to sentences, record and plan. DEVELOPERS.md says how to run it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 8, time = 2)
public class SummaryBenchmark {

  private static final double NANOSECONDS = 1e9;

  private final JobId job = Pages.JOB;
  private final List<PageReading> readings =
      List.of(
          Pages.benchCard(job, 1, "sound"),
          Pages.pair(job, 2, -35, 15),
          Pages.pair(job, 3, -36, -30),
          Pages.pair(job, 4, -3, 3),
          Pages.line(job, 5, -1, 2, 0, 3, -2),
          Pages.sightIn(job, 6, 8, -20));

  private long jobs;
  private long began;

  /** Begins to count processor time, which other work on a busy machine does not lengthen. */
  @Setup(Level.Iteration)
  public void begin() {
    jobs = 0;
    began = processorTime();
  }

  /** Says how many jobs a second of processor time was enough for. */
  @TearDown(Level.Iteration)
  public void end() {
    double seconds = (processorTime() - began) / NANOSECONDS;
    System.out.printf(Locale.ROOT, "(%.0f a second of processor time) ", jobs / seconds);
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** All numbers and claims of a job. */
  @Benchmark
  public void numbersAndClaims(Blackhole sink) {
    jobs++;
    results(JobSummary.of(job, readings), sink);
  }

  private static void results(JobSummary summary, Blackhole sink) {
    summary.pairs().forEach(pair -> sink.consume(pair.equivalence()));
    summary.lines().forEach(line -> sink.consume(line.drift().map(drift -> drift.drifts())));
    summary
        .groups()
        .forEach(
            group -> {
              sink.consume(group.spread());
              sink.consume(group.flyer());
            });
  }

  /** The same with record, sentences and plan. */
  @Benchmark
  public void everythingSaid(Blackhole sink) {
    jobs++;
    JobSummary summary = JobSummary.of(job, readings);
    BowRecord record = RecordOfSheets.of(summary, Optional.empty());
    record.last().pairs().forEach(pair -> sink.consume(Verdict.of(pair)));
    summary.lines().forEach(line -> sink.consume(LineVerdict.of(line)));
    record.last().groups().forEach(group -> sink.consume(GroupVerdict.sentences(group)));
    BowSetup setup = BowSetup.of(record, Optional.empty());
    sink.consume(Planner.plan(record.last(), setup, ShopPrior.NONE).remarks());
  }
}
