package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Answers;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.result.Overview;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.outcome.Trouble;

/**
 * Everything that was ever read.
 *
 * <p>Readings are only ever added: a page that reads differently later, by a better version, gets
 * another reading, and the last one counts. A job begins with the first of its sheets that is read,
 * or with a card that carries its record.
 *
 * <p>Several processes may use one store at a time. What a method did is on the disk when it
 * returns; when it throws, nothing has changed. Every method throws {@link
 * sheaf.desk.outcome.Trouble} when the disk or the database would not do it. Not for several
 * threads.
 */
public final class Store implements AutoCloseable {

  /** What became of a file that was to be kept. */
  public enum Filing {
    /** It was not kept, as no page of it names a job. */
    NOT_KEPT,
    /** At least one page said something that was not known of it. */
    NEW,
    /** All of this had been read before. */
    KNOWN
  }

  /** Jobs brought up to date in one transaction. */
  private static final int AT_A_TIME = 500;

  private final Session session;

  private Store(StorePlace place, Engine engine, Clock clock) {
    this.session = new Session(place, engine, clock);
  }

  /** Opens the store at a place; makes the home folder and the store first when there is none. */
  public static Store open(StorePlace place, Clock clock) {
    place.home().create();
    return new Store(place, place.engine(), clock);
  }

  /** Opens the store in a home folder; makes both first when there are none. */
  public static Store open(HomeFolder home, Clock clock) {
    return open(StorePlace.in(home), clock);
  }

  /** Opens the store at a place; empty, and nothing is made, when there is none. */
  public static Optional<Store> openExisting(StorePlace place, Clock clock) {
    Engine engine = place.engine();
    return engine.isThere() ? Optional.of(new Store(place, engine, clock)) : Optional.empty();
  }

  /**
   * Keeps a file and what its pages said.
   *
   * @param name the file's name, without folders
   * @param content the file, byte for byte
   * @param pages what was read, one for each page, in order
   * @param reader what read them: a version
   */
  public Filing file(String name, byte[] content, List<PageReading> pages, String reader) {
    if (pages.stream().allMatch(page -> page.sheet().isEmpty())) {
      return Filing.NOT_KEPT;
    }
    String digest = session.keepBefore(content);
    return session.change(
        reader,
        "read " + name,
        change -> {
          session.keep(change, digest, name, content);
          return PageFiling.add(session, change, digest, name, pages) ? Filing.NEW : Filing.KNOWN;
        });
  }

  /** All that is known of a job; empty when nothing of it was taken in yet. */
  public Optional<StoredJob> job(JobId job) {
    return session.query(
        () -> StoredJob.find(job, session.connection(), session.clock().getZone()));
  }

  /** The scans that wait to be read. */
  public Scans scans() {
    return new Scans(session);
  }

  /** The last reading of every page that names a job, in the order they were made. */
  public List<PageReading> readings(JobId job) {
    return session.query(() -> Shelf.readings(session.connection(), job));
  }

  /**
   * Keeps a finished card and the record that it carried; earlier ones stay.
   *
   * @param name the file's name, without folders
   * @param content the card, byte for byte
   * @param record what it carried
   * @param reader what imported it: a version
   */
  public void importCard(String name, byte[] content, BowRecord record, String reader) {
    String digest = session.keepBefore(content);
    session.change(
        reader,
        "imported " + name,
        change -> {
          session.keep(change, digest, name, content);
          session.open(change, List.of(record.last().job()));
          change.record(digest, record);
          change.overviews(List.of(record.last().job()));
          return true;
        });
  }

  /** Every reading ever made of pages that name a job, in the order they were made. */
  public List<KeptReading> everyReading(JobId job) {
    return session.query(() -> Shelf.everyReading(session.connection(), job));
  }

  /** A file that is kept, byte for byte; empty when it is not there any more. */
  public Optional<byte[]> original(String digest) {
    return session.query(
        () -> {
          try (InputStream content = session.originals().open(digest)) {
            return Optional.of(content.readAllBytes());
          } catch (NoSuchFileException e) {
            return Optional.empty();
          } catch (IOException e) {
            throw Trouble.cannotRead("An original in the store", e);
          }
        });
  }

  /**
   * Keeps what a person said of a known job; all of it or nothing.
   *
   * @param program that took the answers: a version
   */
  public void answer(JobId job, List<Answer> answers, String program) {
    session.change(
        program,
        "answered about " + job,
        change -> {
          for (Answer answer : answers) {
            change.answer(job, answer);
          }
          change.overviews(List.of(job));
          return true;
        });
  }

  /** What people said of a job. */
  public Answers answers(JobId job) {
    return session.query(() -> Shelf.answers(session.connection(), job));
  }

  /** The record of a job that was imported last; empty when there is none. */
  public Optional<ImportedRecord> imported(JobId job) {
    return session.query(() -> Shelf.imported(session.connection(), job));
  }

  /** When a sheet of a job was read last; empty when none was. */
  public Optional<Instant> lastRead(JobId job) {
    return session.query(() -> Shelf.lastRead(session.connection(), job));
  }

  /** When the first sheet or card of a job was taken in; empty for an unknown job. */
  public Optional<Instant> opened(JobId job) {
    return session.query(() -> Shelf.opened(session.connection(), job));
  }

  /** The jobs that were opened last, the latest first; at most so many. */
  public List<JobId> jobs(int most) {
    return session.query(() -> Shelf.jobs(session.connection(), most));
  }

  /** How many jobs were opened. */
  public int count() {
    return session.query(() -> Shelf.count(session.connection()));
  }

  /** The readings that were made last, the latest first; at most so many. */
  public List<PageReading> lastReadings(int most) {
    return session.query(() -> Shelf.lastReadings(session.connection(), most));
  }

  /** The secret that opens a job's record; empty when nothing of the job was taken in yet. */
  public Optional<RecordKey> recordKey(JobId job) {
    return session.query(() -> Shelf.recordKey(session.connection(), job));
  }

  /** The job whose record a key opens, or opened once; empty for a key that was never given. */
  public Optional<JobId> jobOf(RecordKey key) {
    return session.query(() -> Shelf.jobOf(session.connection(), key));
  }

  /** Gives a known job's record another key; the one before opens nothing from now on. */
  public void newRecordKey(JobId job, String program) {
    session.change(
        program,
        "gave the record another key",
        change -> {
          change.recordKey(job, session.newKey());
          return true;
        });
  }

  /**
   * Notes what was printed; jobs on paper are not opened before the first sheet is read.
   *
   * @param earlier the job that these are a later visit of; empty where none is known
   */
  public void printed(Collection<SheetCode> sheets, Optional<JobId> earlier, String program) {
    Set<JobId> jobs = sheets.stream().map(SheetCode::job).collect(Collectors.toSet());
    session.change(
        program,
        "printed",
        change -> {
          change.sheets(sheets);
          if (earlier.isPresent()) {
            for (JobId job : jobs) {
              change.visit(job, earlier);
            }
          }
          return true;
        });
  }

  /** Notes that a finished card of a known job was made. */
  public void cardMade(JobId job, String program) {
    session.change(
        program,
        "made the card",
        change -> {
          change.card(job);
          change.overviews(List.of(job));
          return true;
        });
  }

  /**
   * Notes that a job is a later visit of another's bow.
   *
   * @param earlier the visit before it; empty when it is the first after all
   */
  public void visits(JobId job, Optional<JobId> earlier, String program) {
    session.change(
        program,
        "told its earlier visit",
        change -> {
          change.visit(job, earlier);
          return true;
        });
  }

  /** The visit of the same bow before a job's; empty when none is known. */
  public Optional<JobId> before(JobId job) {
    return session.query(() -> Shelf.before(session.connection(), job));
  }

  /** The visits of the same bow right after a job's; two when its papers were printed twice. */
  public List<JobId> after(JobId job) {
    return session.query(() -> Shelf.after(session.connection(), job));
  }

  /**
   * The jobs in whose id, day, customer, bow, technician or state every word is found, those that
   * changed last first.
   *
   * @param words to look for, in any letters; none finds all
   * @param open whether to leave out jobs of which nothing is left to do
   * @param most so many
   */
  public List<Overview> find(List<String> words, boolean open, int most) {
    bringOverviewsUpToDate();
    return session.query(() -> Overviews.find(session.connection(), words, open, most));
  }

  /** Jobs from before there were overviews get theirs, some at a time so that others may write. */
  private void bringOverviewsUpToDate() {
    String form = String.valueOf(Overviews.FORM);
    if (session.fact("overviews").equals(Optional.of(form))) {
      return;
    }
    List<JobId> outdated = outdated();
    while (!outdated.isEmpty()) {
      List<JobId> some = outdated;
      session.change(
          "",
          "",
          change -> {
            change.overviews(some);
            return true;
          });
      outdated = outdated();
    }
    session.set("overviews", form);
  }

  private List<JobId> outdated() {
    return session.query(() -> Overviews.outdated(session.connection(), AT_A_TIME));
  }

  /** Copies of all that is kept, and whether it is sound. */
  public Archives archives() {
    return new Archives(session);
  }

  @Override
  public void close() {
    session.close();
  }
}
