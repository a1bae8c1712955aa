package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Answers;
import sheaf.core.answer.ReadAt;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.desk.json.AnswerJson;
import sheaf.desk.json.PageJson;
import sheaf.desk.json.RecordJson;

/** The questions that are asked of the tables. */
final class Shelf {

  /** A reading as a row has it; the last of a page is the one made last. */
  private record Line(long id, long page, Instant at, Optional<String> job, String text) {
    static final Comparator<Line> BY_TIME =
        Comparator.comparing(Line::at).thenComparingLong(Line::id);
  }

  private Shelf() {}

  /** The last reading of every page that names a job, in the order they were made. */
  static List<PageReading> readings(Connection connection, JobId job) throws SQLException {
    Map<Long, Line> last = new HashMap<>();
    for (Line line :
        lines(connection, "page IN (SELECT page FROM readings WHERE job = ?)", job.text())) {
      last.merge(line.page(), line, (one, other) -> later(one, other));
    }
    List<Line> named =
        last.values().stream()
            .filter(line -> line.job().equals(Optional.of(job.text())))
            .sorted(Line.BY_TIME)
            .toList();
    return parse(named);
  }

  /** The last reading of a page; empty when it was never read. */
  static Optional<PageReading> last(Connection connection, long page) throws SQLException {
    return last(lines(connection, "page = ?", page));
  }

  /** The last reading of a sheet, in whichever file; empty when it was never read. */
  static Optional<PageReading> last(Connection connection, SheetCode sheet) throws SQLException {
    return last(lines(connection, "job = ? AND sheet = ?", sheet.job().text(), sheet.number()));
  }

  private static Optional<PageReading> last(List<Line> lines) throws SQLException {
    Optional<Line> last = lines.stream().max(Line.BY_TIME);
    return parse(last.map(List::of).orElse(List.of())).stream().findFirst();
  }

  /** The numbers and layouts of a job's sheets that were printed, by number. */
  static Map<Integer, LayoutId> printed(Connection connection, JobId job) throws SQLException {
    Map<Integer, LayoutId> printed = new TreeMap<>();
    Sql.each(
        connection,
        "SELECT number, layout FROM sheets WHERE job = ? ORDER BY id",
        row -> printed.put(row.getInt(1), LayoutId.parse(row.getString(2)).orElseThrow()),
        job.text());
    return printed;
  }

  /** When a card of a job was made last. */
  static Optional<Instant> lastCard(Connection connection, JobId job) throws SQLException {
    return Sql.first(
        connection,
        "SELECT made_at FROM cards JOIN revisions ON revisions.id = revision WHERE job = ?"
            + " ORDER BY cards.id DESC LIMIT 1",
        row -> Instant.parse(row.getString(1)),
        job.text());
  }

  /** The visit of the same bow before a job's; empty when none is known. */
  static Optional<JobId> before(Connection connection, JobId job) throws SQLException {
    return Sql.first(
        connection,
        "SELECT earlier FROM visits WHERE job = ? ORDER BY id DESC LIMIT 1",
        row -> Optional.ofNullable(row.getString(1)).map(JobId::new).orElse(null),
        job.text());
  }

  /** The visits of the same bow right after a job's, in the order in which they were noted. */
  static List<JobId> after(Connection connection, JobId job) throws SQLException {
    return Sql.list(
        connection,
        "SELECT job FROM visits AS mine WHERE earlier = ? AND NOT EXISTS"
            + " (SELECT 1 FROM visits WHERE job = mine.job AND id > mine.id) ORDER BY id",
        row -> new JobId(row.getString(1)),
        job.text());
  }

  private static Line later(Line one, Line other) {
    return Line.BY_TIME.compare(one, other) >= 0 ? one : other;
  }

  private static List<Line> lines(Connection connection, String which, Object... values)
      throws SQLException {
    return Sql.list(
        connection,
        "SELECT id, page, made_at, job, reading FROM readings WHERE " + which,
        row ->
            new Line(
                row.getLong(1),
                row.getLong(2),
                Instant.parse(row.getString(3)),
                Optional.ofNullable(row.getString(4)),
                row.getString(5)),
        values);
  }

  private static List<PageReading> parse(List<Line> lines) throws SQLException {
    List<PageReading> pages = new ArrayList<>();
    for (Line line : lines) {
      pages.add(page(line.text()));
    }
    return pages;
  }

  private static PageReading page(String line) throws SQLException {
    try {
      return PageJson.parse(line);
    } catch (IllegalArgumentException e) {
      throw new SQLException("a reading in it is of another version (" + e.getMessage() + ")", e);
    }
  }

  /** The readings that were made last, the latest first. */
  static List<PageReading> lastReadings(Connection connection, int most) throws SQLException {
    return parse(
        lines(connection, "id > (SELECT max(id) - ? FROM readings) ORDER BY id DESC", most));
  }

  /** How many jobs were opened. */
  static int count(Connection connection) throws SQLException {
    return Sql.first(connection, "SELECT count(*) FROM jobs", row -> row.getInt(1)).orElse(0);
  }

  /** The jobs that were opened last, the latest first. */
  static List<JobId> jobs(Connection connection, int most) throws SQLException {
    return Sql.list(
        connection,
        "SELECT id FROM jobs ORDER BY opened_at DESC, id LIMIT ?",
        row -> new JobId(row.getString(1)),
        most);
  }

  /** The record of a job that came last with a card. */
  static Optional<ImportedRecord> imported(Connection connection, JobId job) throws SQLException {
    String sql =
        "SELECT record, imported_at, name FROM records JOIN originals ON sha256 = original"
            + " WHERE job = ? ORDER BY id DESC LIMIT 1";
    return Sql.first(
        connection,
        sql,
        row ->
            new ImportedRecord(
                record(row.getString(1)), Instant.parse(row.getString(2)), row.getString(3)),
        job.text());
  }

  private static BowRecord record(String line) throws SQLException {
    try {
      return RecordJson.parse(line);
    } catch (IllegalArgumentException e) {
      throw new SQLException("a record in it is of another version (" + e.getMessage() + ")", e);
    }
  }

  /** Every reading ever made of pages that name a job, in the order they were made. */
  static List<KeptReading> everyReading(Connection connection, JobId job) throws SQLException {
    return Sql.list(
            connection,
            "SELECT original, number, made_at, reading FROM readings JOIN pages ON pages.id = page"
                + " WHERE job = ? ORDER BY readings.id",
            row ->
                new KeptReading(
                    row.getString(1),
                    row.getInt(2),
                    new ReadAt(page(row.getString(4)), Instant.parse(row.getString(3)))),
            job.text())
        .stream()
        .sorted(Comparator.comparing(kept -> kept.read().at()))
        .toList();
  }

  /** What people said of a job, in the order they said it. */
  static Answers answers(Connection connection, JobId job) throws SQLException {
    return new Answers(
        Sql.list(
            connection,
            "SELECT answer FROM answers WHERE job = ? ORDER BY id",
            row -> answer(row.getString(1)),
            job.text()));
  }

  /** When somebody said something of a job last. */
  static Optional<Instant> lastAnswer(Connection connection, JobId job) throws SQLException {
    return answers(connection, job).all().stream().map(Answer::when).max(Comparator.naturalOrder());
  }

  private static Answer answer(String line) throws SQLException {
    try {
      return AnswerJson.parse(line);
    } catch (IllegalArgumentException e) {
      throw new SQLException("an answer in it is of another version (" + e.getMessage() + ")", e);
    }
  }

  /** When a sheet of a job was read last. */
  static Optional<Instant> lastRead(Connection connection, JobId job) throws SQLException {
    return Sql.list(
            connection,
            "SELECT made_at FROM readings WHERE job = ?",
            row -> Instant.parse(row.getString(1)),
            job.text())
        .stream()
        .max(Comparator.naturalOrder());
  }

  /** When the first sheet or card of a job was taken in. */
  static Optional<Instant> opened(Connection connection, JobId job) throws SQLException {
    return Sql.first(
        connection,
        "SELECT opened_at FROM jobs WHERE id = ?",
        row -> Instant.parse(row.getString(1)),
        job.text());
  }

  /** The secret of a job. */
  static Optional<RecordKey> recordKey(Connection connection, JobId job) throws SQLException {
    Optional<RecordKey> later =
        Sql.first(
            connection,
            "SELECT record_key FROM record_keys WHERE job = ? ORDER BY id DESC LIMIT 1",
            row -> new RecordKey(row.getString(1)),
            job.text());
    if (later.isPresent()) {
      return later;
    }
    return Sql.first(
        connection,
        "SELECT record_key FROM jobs WHERE id = ?",
        row -> new RecordKey(row.getString(1)),
        job.text());
  }

  /** The job that a key opens, or opened once; empty for a key that was never given. */
  static Optional<JobId> jobOf(Connection connection, RecordKey key) throws SQLException {
    return Sql.first(
        connection,
        "SELECT id FROM jobs WHERE record_key = ?"
            + " UNION ALL SELECT job FROM record_keys WHERE record_key = ?",
        row -> new JobId(row.getString(1)),
        key.text(),
        key.text());
  }
}
