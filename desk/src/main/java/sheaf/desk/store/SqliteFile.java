package sheaf.desk.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;
import sheaf.desk.outcome.Trouble;

/**
 * A database in a file, on this computer.
 *
 * <p>A write-ahead log with full synchronisation: what was committed outlasts a loss of power, and
 * readers never wait for a writer (sqlite.org, "Write-Ahead Logging" and "PRAGMA synchronous").
 *
 * @param file the database
 * @param kept folder of the files that were read
 */
record SqliteFile(Path file, Path kept) implements Engine {

  /** Marks a SQLite file as ours in its {@code application_id}: the letters "Shea". */
  private static final int APPLICATION = 0x53686561;

  /** How long to wait for another process that writes, in milliseconds. */
  private static final int PATIENCE = 30_000;

  private static final String WAITING = "SELECT original FROM scans WHERE state = 'waiting'";

  private static final Sql.Row<String> FIRST = row -> row.getString(1);

  private static final String DAMAGED =
      "is damaged; nothing was changed. Put a backup in its place: sheaf restore FILE.";

  private static final String SYNCHRONOUS_FULL = "2";

  @Override
  public boolean isThere() {
    return Files.exists(file);
  }

  @Override
  public Originals originals(Connection connection) {
    return new FolderOfOriginals(kept);
  }

  /** Only one process writes at a time, and its transactions begin with the right to. */
  @Override
  public String keepingOthersOut() {
    return "";
  }

  /** Rows cannot be locked here, but a file for each can; the system lets go of it. */
  @Override
  public <T> Optional<T> withNextScan(Session session, OnScan<T> work) throws SQLException {
    Path folder = file.resolveSibling("in-hand");
    for (String digest :
        Sql.list(
            session.connection(),
            WAITING + " ORDER BY tries, arrived_at, original LIMIT 256",
            FIRST)) {
      try (InHand hand = InHand.take(folder, digest)) {
        if (hand.isTaken() && isWaiting(session, digest)) {
          Sql.update(
              session.connection(),
              "UPDATE scans SET tries = tries + 1 WHERE original = ?",
              digest);
          return Optional.of(work.run(digest));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isWaiting(Session session, String digest) throws SQLException {
    return Sql.first(session.connection(), WAITING + " AND original = ?", FIRST, digest)
        .isPresent();
  }

  @Override
  public Connection connect() {
    try {
      if (!isThere()) {
        alone(this::create);
      }
      recognise();
      return opened();
    } catch (SQLException e) {
      throw trouble(e);
    }
  }

  @Override
  public Connection snapshot() {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(PATIENCE);
    config.setTransactionMode(SQLiteConfig.TransactionMode.DEFERRED);
    try {
      Connection connection =
          DriverManager.getConnection("jdbc:sqlite:" + file, config.toProperties());
      connection.setAutoCommit(false);
      // The moment is that of the first look.
      pragma(connection, "schema_version");
      return connection;
    } catch (SQLException e) {
      throw trouble(e);
    }
  }

  @Override
  public List<String> faults(Connection connection) throws SQLException {
    List<String> faults =
        new ArrayList<>(
            Sql.list(connection, "PRAGMA integrity_check(20)", row -> row.getString(1)));
    faults.remove("ok");
    faults.addAll(
        Sql.list(
            connection,
            "PRAGMA foreign_key_check",
            row ->
                "row %s of %s points to nothing in %s"
                    .formatted(row.getString(2), row.getString(1), row.getString(3))));
    return faults;
  }

  /** Looks at the file without any lock, log or change. */
  private void recognise() throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setOpenMode(SQLiteOpenMode.OPEN_URI);
    String url = "jdbc:sqlite:" + file.toUri() + "?immutable=1";
    try (Connection connection = DriverManager.getConnection(url, config.toProperties())) {
      if (!pragma(connection, "application_id").equals(String.valueOf(APPLICATION))) {
        throw Trouble.environment(
            file + " is the database of another program; it was left as it is.");
      }
    }
  }

  private Connection opened() throws SQLException {
    Connection connection = source(file).getConnection();
    try {
      expect(connection, "journal_mode", "wal");
      expect(connection, "synchronous", SYNCHRONOUS_FULL);
      expect(connection, "foreign_keys", "1");
      refuseTorn(connection);
      int version = version(connection);
      if (version > Migrations.VERSION) {
        throw Trouble.environment(
            "%s was written by a newer Sheaf (format %d, this one knows %d): use that one."
                .formatted(file, version, Migrations.VERSION));
      }
      if (version < Migrations.VERSION) {
        alone(this::update);
      }
      return connection;
    } catch (SQLException | Trouble e) {
      connection.close();
      throw e;
    }
  }

  /** A file that ends before its last page would only be found out when that page is needed. */
  private void refuseTorn(Connection connection) throws SQLException {
    long pages = Long.parseLong(pragma(connection, "page_count"));
    long bytes = pages * Long.parseLong(pragma(connection, "page_size"));
    Path log = beside("-wal");
    try {
      boolean logged = Files.exists(log) && Files.size(log) > 0;
      if (!logged && Files.size(file) < bytes) {
        throw Trouble.environment(file + " " + SqliteWords.DAMAGED);
      }
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private Path beside(String end) {
    return file.resolveSibling(file.getFileName() + end);
  }

  private static SQLiteDataSource source(Path file) {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(PATIENCE);
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file);
    return source;
  }

  private static void expect(Connection connection, String pragma, String wanted)
      throws SQLException {
    String found = pragma(connection, pragma);
    if (!found.equalsIgnoreCase(wanted)) {
      throw new SQLException(pragma + " is " + found + " where " + wanted + " is needed");
    }
  }

  private static int version(Connection connection) throws SQLException {
    return Integer.parseInt(pragma(connection, "user_version"));
  }

  private static String pragma(Connection connection, String name) throws SQLException {
    return Sql.first(connection, "PRAGMA " + name, row -> row.getString(1)).orElseThrow();
  }

  /** Some change of the file itself. */
  @FunctionalInterface
  private interface Change {
    void make() throws SQLException, IOException;
  }

  /** Does something that no other process, nor another thread of this one, may do meanwhile. */
  private void alone(Change change) throws SQLException {
    synchronized (SqliteFile.class) {
      Path lockFile = file.resolveSibling("creating.lock");
      try (FileChannel channel =
              FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock lock = channel.lock()) {
        if (lock.isValid()) {
          change.make();
        }
      } catch (IOException e) {
        throw Trouble.cannotWrite(file, e);
      }
    }
  }

  /** Makes the database under another name and renames it, so that it is never seen half made. */
  private void create() throws SQLException, IOException {
    if (isThere()) {
      return;
    }
    if (Files.exists(beside("-wal"))) {
      throw Trouble.environment(
          file
              + " is gone but for its log: put it back, or a backup in its place: sheaf restore FILE.");
    }
    Path partial = file.resolveSibling("creating.db");
    // A log left beside it would be taken for its own.
    for (String end : List.of("", "-wal", "-shm")) {
      Files.deleteIfExists(partial.resolveSibling(partial.getFileName() + end));
    }
    migrate(partial, 0);
    Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Another process may have done it since the version was looked at. */
  private void update() throws SQLException {
    int made;
    try (Connection connection = source(file).getConnection()) {
      made = version(connection);
    }
    if (made < Migrations.VERSION) {
      migrate(file, made);
    }
  }

  /** What was done is noted last, so that whoever is broken off midway goes on later. */
  private static void migrate(Path file, int made) throws SQLException {
    SQLiteDataSource source = source(file);
    Migrations.run(source, "sqlite", made);
    try (Connection connection = source.getConnection()) {
      Sql.update(connection, "PRAGMA application_id = " + APPLICATION);
      Sql.update(connection, "PRAGMA user_version = " + Migrations.VERSION);
    }
  }

  @Override
  public Trouble trouble(SQLException e) {
    return SqliteWords.trouble(file, e);
  }
}
