package sheaf.desk.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The tables, version 1. */
final class Schema {

  /** Kept in the database's {@code user_version}; a store with a higher one is refused. */
  static final int VERSION = 1;

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

  private Schema() {}

  private static String appendOnly(String table, String what) {
    return """
        CREATE TRIGGER no_%2$s_of_%1$s BEFORE %2$s ON %1$s
        BEGIN SELECT RAISE(ABORT, '%1$s are only ever added to'); END"""
        .formatted(table, what);
  }

  /** Makes the tables in an empty database. */
  static void create(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String sql : STATEMENTS) {
        statement.execute(sql);
      }
      statement.execute("PRAGMA application_id = " + APPLICATION);
      statement.execute("PRAGMA user_version = " + VERSION);
    }
  }
}
