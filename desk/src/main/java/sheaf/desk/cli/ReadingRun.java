package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.JobSummary;
import sheaf.desk.file.InputFile;
import sheaf.desk.intake.Begun;
import sheaf.desk.intake.Intake;
import sheaf.desk.json.PageJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.JobReport;
import sheaf.desk.report.PageTable;
import sheaf.desk.store.Store;

/** One run over a stack of files: each is read, filed and told of. */
final class ReadingRun {

  /** How the results are told. */
  enum Telling {
    /** A table and what each job came to, when all is read. */
    FOR_PEOPLE,
    /** A line of JSON for each page, as soon as its file is safely filed. */
    FOR_PROGRAMS
  }

  /** Files that are read while one is filed: enough to keep every processor busy. */
  private static final int AHEAD = Runtime.getRuntime().availableProcessors() + 1;

  private final Console console;
  private final Intake intake;
  private final Telling telling;
  private final Progress progress;
  private final List<Path> files;
  private final List<PageReading> pages = new ArrayList<>();
  private ExitStatus status = ExitStatus.OK;
  private int done;
  private int told;

  ReadingRun(Desk desk, Intake intake, Telling telling, List<Path> files) {
    this.console = desk.console();
    this.intake = intake;
    this.telling = telling;
    this.files = files;
    this.progress = new Progress(console, desk.clock(), files.size());
  }

  /**
   * Reads all files and tells what they said.
   *
   * @param home options that another command needs to find the same store
   * @return how it ended
   */
  ExitStatus run(String home) {
    Iterator<Path> coming = files.iterator();
    Deque<Begun> begun = new ArrayDeque<>();
    try {
      while (coming.hasNext() || !begun.isEmpty()) {
        progress.show(done, pages.size());
        while (coming.hasNext() && begun.size() < AHEAD) {
          begin(coming.next()).ifPresent(begun::add);
        }
        if (!begun.isEmpty()) {
          intake.take(begun.remove(), this::add);
          acknowledge();
          done++;
        }
      }
    } finally {
      begun.forEach(Begun::abandon);
      // What was read before something stopped the rest is still told.
      progress.clear();
      if (telling == Telling.FOR_PEOPLE) {
        console.out().print(PageTable.of(pages, console.columns()));
      }
    }
    if (telling == Telling.FOR_PEOPLE) {
      jobs().forEach(job -> tell(job, home));
    }
    console.flush();
    return status;
  }

  /** Begins a file; empty, and said so, when it cannot be had: the others are still read. */
  private Optional<Begun> begin(Path file) {
    try {
      return Optional.of(intake.begin(file, InputFile.content(file)));
    } catch (Trouble e) {
      progress.clear();
      console.say("sheaf: " + e.getMessage());
      status = status.or(e.status());
      done++;
      return Optional.empty();
    }
  }

  private void add(PageReading page) {
    pages.add(page);
    status = status.or(ExitStatus.of(page.state()));
    progress.show(done, pages.size());
  }

  /** A program may take what it was told for kept. */
  private void acknowledge() {
    if (telling == Telling.FOR_PROGRAMS) {
      progress.clear();
      pages.subList(told, pages.size()).forEach(page -> console.json(PageJson.line(page)));
      told = pages.size();
    }
  }

  /** The jobs whose sheets were read, in the order they turned up. */
  private Set<JobId> jobs() {
    Set<JobId> jobs = new LinkedHashSet<>();
    pages.stream()
        .filter(page -> page.state() != ReadingState.REFUSED)
        .forEach(page -> page.sheet().map(SheetCode::job).ifPresent(jobs::add));
    return jobs;
  }

  private void tell(JobId job, String home) {
    Store store = intake.store();
    JobSummary summary = JobSummary.of(job, store.readings(job), store.answers(job));
    console.out().println();
    console.out().print(JobReport.of(summary, home, console.columns()));
  }
}
