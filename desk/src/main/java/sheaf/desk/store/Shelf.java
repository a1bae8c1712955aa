package sheaf.desk.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.desk.json.PageJson;
import sheaf.desk.json.RecordJson;

/**
 * The statements behind the store.
 *
 * @param connection in a transaction when something is added
 * @param now when something was added
 * @param reader what read it
 */
record Shelf(Connection connection, Instant now, String reader) {

  /** Notes a file, unless it is known. */
  void original(String digest, String name, long bytes) throws SQLException {
    insert(
        "INSERT INTO originals (sha256, name, bytes, kept_at) VALUES (?, ?, ?, ?)"
            + " ON CONFLICT DO NOTHING",
        digest,
        name,
        bytes,
        now.toString());
  }

  /** Opens a job, unless it is known. */
  void job(JobId job, Supplier<RecordKey> key) throws SQLException {
    insert(
        "INSERT INTO jobs (id, record_key, opened_at) VALUES (?, ?, ?)"
            + " ON CONFLICT (id) DO NOTHING",
        job.text(),
        key.get().text(),
        now.toString());
  }

  /** Adds a page's reading; false when the last one of that page said the same. */
  boolean reading(String digest, int number, PageReading page) throws SQLException {
    insert(
        "INSERT INTO pages (original, number) VALUES (?, ?) ON CONFLICT DO NOTHING",
        digest,
        number);
    String line = PageJson.line(page);
    Optional<PageReading> last = last(digest, number);
    if (last.isPresent() && sameButForTheName(last.get(), PageJson.parse(line))) {
      return false;
    }
    insert(
        "INSERT INTO readings (page, job, made_at, made_by, reading)"
            + " SELECT id, ?, ?, ?, ? FROM pages WHERE original = ? AND number = ?",
        page.sheet().map(SheetCode::job).map(JobId::text).orElse(null),
        now.toString(),
        reader,
        line,
        digest,
        number);
    return true;
  }

  private static boolean sameButForTheName(PageReading one, PageReading other) {
    return one.equals(other.from(one.source()));
  }

  private Optional<PageReading> last(String digest, int number) throws SQLException {
    return pages(
            connection,
            "SELECT reading FROM readings JOIN pages ON pages.id = page"
                + " WHERE original = ? AND number = ? ORDER BY readings.id DESC LIMIT 1",
            digest,
            number)
        .stream()
        .findFirst();
  }

  /** The last reading of every page that names a job, in the order they were made. */
  static List<PageReading> readings(Connection connection, JobId job) throws SQLException {
    return pages(
        connection,
        "SELECT reading FROM readings AS mine WHERE job = ? AND NOT EXISTS"
            + " (SELECT 1 FROM readings WHERE page = mine.page AND id > mine.id) ORDER BY id",
        job.text());
  }

  /** Adds a record that a card carried. */
  void record(String digest, BowRecord record) throws SQLException {
    insert(
        "INSERT INTO records (original, job, imported_at, imported_by, record)"
            + " VALUES (?, ?, ?, ?, ?)",
        digest,
        record.last().job().text(),
        now.toString(),
        reader,
        RecordJson.line(record));
  }

  /** The jobs that were opened last, the latest first. */
  static List<JobId> jobs(Connection connection, int most) throws SQLException {
    List<JobId> jobs = new ArrayList<>();
    String sql = "SELECT id FROM jobs ORDER BY opened_at DESC, id LIMIT ?";
    try (PreparedStatement statement = prepare(connection, sql, most)) {
      ResultSet row = statement.executeQuery();
      while (row.next()) {
        JobId.parse(row.getString(1)).ifPresent(jobs::add);
      }
    }
    return jobs;
  }

  /** The record of a job that came last with a card. */
  static Optional<ImportedRecord> imported(Connection connection, JobId job) throws SQLException {
    String sql =
        "SELECT record, imported_at, name FROM records JOIN originals ON sha256 = original"
            + " WHERE job = ? ORDER BY id DESC LIMIT 1";
    try (PreparedStatement statement = prepare(connection, sql, job.text())) {
      ResultSet row = statement.executeQuery();
      return row.next()
          ? Optional.of(
              new ImportedRecord(
                  record(row.getString(1)), Instant.parse(row.getString(2)), row.getString(3)))
          : Optional.empty();
    }
  }

  private static BowRecord record(String line) throws SQLException {
    try {
      return RecordJson.parse(line);
    } catch (IllegalArgumentException e) {
      throw new SQLException("a record in it is of another version (" + e.getMessage() + ")", e);
    }
  }

  /** When the last of the readings that count for a job was made. */
  static Optional<Instant> lastRead(Connection connection, JobId job) throws SQLException {
    String sql = "SELECT made_at FROM readings WHERE job = ? ORDER BY id DESC LIMIT 1";
    return instant(connection, sql, job);
  }

  /** When a job was opened. */
  static Optional<Instant> opened(Connection connection, JobId job) throws SQLException {
    return instant(connection, "SELECT opened_at FROM jobs WHERE id = ?", job);
  }

  private static Optional<Instant> instant(Connection connection, String sql, JobId job)
      throws SQLException {
    try (PreparedStatement statement = prepare(connection, sql, job.text())) {
      ResultSet row = statement.executeQuery();
      return row.next() ? Optional.of(Instant.parse(row.getString(1))) : Optional.empty();
    }
  }

  /** The secret of a job. */
  static Optional<RecordKey> recordKey(Connection connection, JobId job) throws SQLException {
    try (PreparedStatement statement =
        prepare(connection, "SELECT record_key FROM jobs WHERE id = ?", job.text())) {
      ResultSet row = statement.executeQuery();
      return row.next() ? Optional.of(new RecordKey(row.getString(1))) : Optional.empty();
    }
  }

  private static List<PageReading> pages(Connection connection, String sql, Object... values)
      throws SQLException {
    List<PageReading> pages = new ArrayList<>();
    try (PreparedStatement statement = prepare(connection, sql, values)) {
      ResultSet row = statement.executeQuery();
      while (row.next()) {
        pages.add(parse(row.getString(1)));
      }
    }
    return pages;
  }

  private static PageReading parse(String line) throws SQLException {
    try {
      return PageJson.parse(line);
    } catch (IllegalArgumentException e) {
      throw new SQLException("a reading in it is of another version (" + e.getMessage() + ")", e);
    }
  }

  private void insert(String sql, Object... values) throws SQLException {
    try (PreparedStatement statement = prepare(connection, sql, values)) {
      statement.executeUpdate();
    }
  }

  private static PreparedStatement prepare(Connection connection, String sql, Object... values)
      throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    return statement;
  }
}
