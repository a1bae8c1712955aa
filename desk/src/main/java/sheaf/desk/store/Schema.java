package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The tables, version 2: version 1 had no records. */
final class Schema {

  /** Kept in the database's {@code user_version}; a store with a higher one is refused. */
  static final int VERSION = 2;

  /** Marks a SQLite file as ours in its {@code application_id}: the letters "Shea". */
  static final int APPLICATION = 0x53686561;

  private static final List<String> STATEMENTS =
      List.of(
          """
          CREATE TABLE originals (
            sha256 TEXT PRIMARY KEY,
            name TEXT NOT NULL,
            bytes INTEGER NOT NULL,
            kept_at TEXT NOT NULL
          ) STRICT""",
          """
          CREATE TABLE jobs (
            id TEXT PRIMARY KEY,
            record_key TEXT NOT NULL UNIQUE,
            opened_at TEXT NOT NULL
          ) STRICT""",
          """
          CREATE TABLE pages (
            id INTEGER PRIMARY KEY,
            original TEXT NOT NULL REFERENCES originals (sha256),
            number INTEGER NOT NULL,
            UNIQUE (original, number)
          ) STRICT""",
          """
          CREATE TABLE readings (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            page INTEGER NOT NULL REFERENCES pages (id),
            job TEXT REFERENCES jobs (id),
            made_at TEXT NOT NULL,
            made_by TEXT NOT NULL,
            reading TEXT NOT NULL
          ) STRICT""",
          "CREATE INDEX readings_of_page ON readings (page, id)",
          "CREATE INDEX readings_of_job ON readings (job, id)",
          appendOnly("originals", "UPDATE"),
          appendOnly("originals", "DELETE"),
          appendOnly("readings", "UPDATE"),
          appendOnly("readings", "DELETE"));

  /** Records that came with finished cards, each beside the file that carried it. */
  private static final List<String> RECORDS =
      List.of(
          """
          CREATE TABLE records (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            original TEXT NOT NULL REFERENCES originals (sha256),
            job TEXT NOT NULL REFERENCES jobs (id),
            imported_at TEXT NOT NULL,
            imported_by TEXT NOT NULL,
            record TEXT NOT NULL
          ) STRICT""",
          "CREATE INDEX records_of_job ON records (job, id)",
          appendOnly("records", "UPDATE"),
          appendOnly("records", "DELETE"));

  private Schema() {}

  private static String appendOnly(String table, String what) {
    return """
        CREATE TRIGGER no_%2$s_of_%1$s BEFORE %2$s ON %1$s
        BEGIN SELECT RAISE(ABORT, '%1$s are only ever added to'); END"""
        .formatted(table, what);
  }

  /** Makes the tables in an empty database. */
  static void create(Connection connection) throws SQLException {
    run(connection, STATEMENTS);
    run(connection, RECORDS);
    run(
        connection,
        List.of("PRAGMA application_id = " + APPLICATION, "PRAGMA user_version = " + VERSION));
  }

  /** Brings a database of version 1 up to date; what is in it stays as it is. */
  static void update(Connection connection) throws SQLException {
    run(connection, RECORDS);
    run(connection, List.of("PRAGMA user_version = " + VERSION));
  }

  private static void run(Connection connection, List<String> statements) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }
}
