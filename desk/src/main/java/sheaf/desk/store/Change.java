package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.function.Supplier;
import sheaf.core.answer.Answer;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.desk.json.AnswerJson;
import sheaf.desk.json.PageJson;
import sheaf.desk.json.RecordJson;

/**
 * One change of the store, in a transaction. What it adds points to its revision: who, when and
 * why. A change that adds nothing leaves no revision.
 */
final class Change {

  /** With as many digits always, so that times in the order of their letters are in order. */
  static final DateTimeFormatter TIME =
      new DateTimeFormatterBuilder().appendInstant(6).toFormatter();

  private final Connection connection;
  private final Engine engine;
  private final ZoneId zone;
  private final String now;
  private final Why why;
  private OptionalLong revision = OptionalLong.empty();

  /**
   * Why something changes.
   *
   * @param who works with the store
   * @param program that does it: a version
   * @param reason in words
   */
  record Why(String who, String program, String reason) {}

  Change(Session session, Instant now, Why why) {
    this.connection = session.connection();
    this.engine = session.engine();
    this.zone = session.clock().getZone();
    this.now = TIME.format(now);
    this.why = why;
  }

  /** When it is made. */
  String now() {
    return now;
  }

  /** The number of this change's revision, which is made when it is first asked for. */
  long revision() throws SQLException {
    if (revision.isEmpty()) {
      revision =
          OptionalLong.of(
              Sql.insert(
                  connection,
                  "INSERT INTO revisions (made_at, who, program, why) VALUES (?, ?, ?, ?)",
                  now,
                  why.who(),
                  why.program(),
                  why.reason()));
    }
    return revision.getAsLong();
  }

  /** Notes a file, unless it is known, and keeps others from adding readings of it. */
  void original(String digest, String name, long bytes) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO originals (sha256, name, bytes, kept_at) VALUES (?, ?, ?, ?)"
            + " ON CONFLICT DO NOTHING",
        digest,
        name,
        bytes,
        now);
    keepOthersOut("SELECT 1 FROM originals WHERE sha256 = ?", digest);
  }

  /** Opens jobs, unless they are known, and keeps others from changing them. */
  void jobs(Collection<JobId> jobs, Supplier<RecordKey> key) throws SQLException {
    // In one order for all, so that no two desks ever wait for each other.
    for (String job : new TreeSet<>(jobs.stream().map(JobId::text).toList())) {
      Sql.update(
          connection,
          "INSERT INTO jobs (id, record_key, opened_at) VALUES (?, ?, ?)"
              + " ON CONFLICT (id) DO NOTHING",
          job,
          key.get().text(),
          now);
      keepOthersOut("SELECT 1 FROM jobs WHERE id = ?", job);
    }
  }

  private void keepOthersOut(String query, String which) throws SQLException {
    if (!engine.keepingOthersOut().isEmpty()) {
      Sql.first(connection, query + engine.keepingOthersOut(), row -> row.getInt(1), which);
    }
  }

  /**
   * Adds a page's reading; false when the last one of that page said the same. A page that was
   * never read is known by its sheet: a file that grew repeats what it held before.
   */
  boolean reading(String digest, int number, PageReading page) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO pages (original, number) VALUES (?, ?) ON CONFLICT DO NOTHING",
        digest,
        number);
    long id =
        Sql.first(
                connection,
                "SELECT id FROM pages WHERE original = ? AND number = ?",
                row -> row.getLong(1),
                digest,
                number)
            .orElseThrow();
    String line = PageJson.line(page);
    Optional<PageReading> last = Shelf.last(connection, id);
    if (last.isEmpty() && page.sheet().isPresent()) {
      last = Shelf.last(connection, page.sheet().get());
    }
    if (last.isPresent() && sameButForTheName(last.get(), PageJson.parse(line))) {
      return false;
    }
    Sql.update(
        connection,
        "INSERT INTO readings (page, job, sheet, made_at, made_by, reading, revision)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        id,
        page.sheet().map(SheetCode::job).map(JobId::text).orElse(null),
        page.sheet().map(SheetCode::number).orElse(null),
        now,
        why.program(),
        line,
        revision());
    return true;
  }

  private static boolean sameButForTheName(PageReading one, PageReading other) {
    return one.equals(other.from(one.source()));
  }

  /** Notes what was printed, unless that is known. */
  void sheets(Collection<SheetCode> sheets) throws SQLException {
    List<Object[]> rows = new ArrayList<>();
    for (SheetCode sheet : sheets) {
      rows.add(
          new Object[] {sheet.job().text(), sheet.number(), sheet.layout().code(), revision()});
    }
    Sql.updateAll(
        connection,
        "INSERT INTO sheets (job, number, layout, revision) VALUES (?, ?, ?, ?)"
            + " ON CONFLICT DO NOTHING",
        rows);
  }

  /** Notes that one job is a later visit of another's bow; that it is the first, without one. */
  void visit(JobId job, Optional<JobId> earlier) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO visits (job, earlier, revision) VALUES (?, ?, ?)",
        job.text(),
        earlier.map(JobId::text).orElse(null),
        revision());
  }

  /** Notes that a finished card was made. */
  void card(JobId job) throws SQLException {
    Sql.update(
        connection, "INSERT INTO cards (job, revision) VALUES (?, ?)", job.text(), revision());
  }

  /** Gives a job's record another key. */
  void recordKey(JobId job, RecordKey key) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO record_keys (job, record_key, revision) VALUES (?, ?, ?)",
        job.text(),
        key.text(),
        revision());
  }

  /** Those of some jobs that are open. */
  List<JobId> known(Collection<JobId> jobs) throws SQLException {
    List<JobId> known = new ArrayList<>();
    for (JobId job : jobs) {
      if (Shelf.opened(connection, job).isPresent()) {
        known.add(job);
      }
    }
    return known;
  }

  /** Makes the overviews of jobs anew, of which something changed. */
  void overviews(Collection<JobId> jobs) throws SQLException {
    for (JobId job : jobs) {
      Overviews.put(connection, job, zone);
    }
  }

  /** Adds a record that a card carried. */
  void record(String digest, BowRecord record) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO records (original, job, imported_at, imported_by, record, revision)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        digest,
        record.last().job().text(),
        now,
        why.program(),
        RecordJson.line(record),
        revision());
  }

  /** Adds what a person said of a job. */
  void answer(JobId job, Answer answer) throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO answers (job, answer, revision) VALUES (?, ?, ?)",
        job.text(),
        AnswerJson.line(answer),
        revision());
  }
}
