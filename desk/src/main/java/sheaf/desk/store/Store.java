package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Answers;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
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

  private final StorePlace place;
  private final Engine engine;
  private final Connection connection;
  private final Originals originals;
  private final Clock clock;
  private final SecureRandom random = new SecureRandom();

  private Store(StorePlace place, Engine engine, Clock clock) {
    this.place = place;
    this.engine = engine;
    this.clock = clock;
    this.connection = engine.connect();
    this.originals = engine.originals(connection);
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
    String digest = keepBefore(content);
    return change(
        reader,
        "read " + name,
        change -> {
          keep(change, digest, name, content);
          Set<JobId> jobs = new HashSet<>();
          pages.forEach(page -> page.sheet().map(SheetCode::job).ifPresent(jobs::add));
          change.jobs(jobs, () -> RecordKey.random(random));
          boolean changed = false;
          for (int i = 0; i < pages.size(); i++) {
            String source = pages.size() == 1 ? name : name + "#" + (i + 1);
            changed |= change.reading(digest, i + 1, pages.get(i).from(source));
          }
          return changed ? Filing.NEW : Filing.KNOWN;
        });
  }

  private String keepBefore(byte[] content) {
    String digest = Originals.digest(content);
    originals.keepBefore(digest, content);
    return digest;
  }

  private void keep(Change change, String digest, String name, byte[] content) throws SQLException {
    change.original(digest, name, content.length);
    originals.keepWithin(digest, content);
  }

  /** The last reading of every page that names a job, in the order they were made. */
  public List<PageReading> readings(JobId job) {
    return query(() -> Shelf.readings(connection, job));
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
    String digest = keepBefore(content);
    change(
        reader,
        "imported " + name,
        change -> {
          keep(change, digest, name, content);
          change.jobs(List.of(record.last().job()), () -> RecordKey.random(random));
          change.record(digest, record);
          return true;
        });
  }

  /** Every reading ever made of pages that name a job, in the order they were made. */
  public List<KeptReading> everyReading(JobId job) {
    return query(() -> Shelf.everyReading(connection, job));
  }

  /** A file that is kept, byte for byte; empty when it is not there any more. */
  public Optional<byte[]> original(String digest) {
    return query(
        () -> {
          try (InputStream content = originals.open(digest)) {
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
    change(
        program,
        "answered about " + job,
        change -> {
          for (Answer answer : answers) {
            change.answer(job, answer);
          }
          return true;
        });
  }

  /** What people said of a job. */
  public Answers answers(JobId job) {
    return query(() -> Shelf.answers(connection, job));
  }

  /** The record of a job that was imported last; empty when there is none. */
  public Optional<ImportedRecord> imported(JobId job) {
    return query(() -> Shelf.imported(connection, job));
  }

  /** When a sheet of a job was read last; empty when none was. */
  public Optional<Instant> lastRead(JobId job) {
    return query(() -> Shelf.lastRead(connection, job));
  }

  /** When the first sheet or card of a job was taken in; empty for an unknown job. */
  public Optional<Instant> opened(JobId job) {
    return query(() -> Shelf.opened(connection, job));
  }

  /** The jobs that were opened last, the latest first; at most so many. */
  public List<JobId> jobs(int most) {
    return query(() -> Shelf.jobs(connection, most));
  }

  /** The secret that opens a job's record; empty when nothing of the job was taken in yet. */
  public Optional<RecordKey> recordKey(JobId job) {
    return query(() -> Shelf.recordKey(connection, job));
  }

  @Override
  public void close() {
    query(
        () -> {
          connection.close();
          return true;
        });
  }

  /** Some SQL. */
  @FunctionalInterface
  private interface Work<T> {
    T run() throws SQLException;
  }

  private <T> T query(Work<T> work) {
    try {
      return work.run();
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  /** Some additions. */
  @FunctionalInterface
  private interface Additions<T> {
    T make(Change change) throws SQLException;
  }

  /** Adds something, all of it or nothing, under a revision that says who, when and why. */
  private <T> T change(String program, String reason, Additions<T> additions) {
    Change.Why why = new Change.Why(place.who(), program, reason);
    return transaction(() -> additions.make(new Change(connection, engine, clock.instant(), why)));
  }

  private <T> T transaction(Work<T> work) {
    return query(
        () -> {
          connection.setAutoCommit(false);
          boolean done = false;
          try {
            T result = work.run();
            connection.commit();
            done = true;
            return result;
          } finally {
            if (!done) {
              connection.rollback();
            }
            connection.setAutoCommit(true);
          }
        });
  }
}
