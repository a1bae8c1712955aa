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
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.sqlite.SQLiteOpenMode;
import sheaf.desk.outcome.Trouble;

/**
 * Opens the database file, and says in words why it could not.
 *
 * <p>A write-ahead log with full synchronisation: what was committed outlasts a loss of power, and
 * readers never wait for a writer (sqlite.org, "Write-Ahead Logging" and "PRAGMA synchronous").
 */
final class Database {

  /** How long to wait for another process that writes, in milliseconds. */
  private static final int PATIENCE = 30_000;

  /** With fewer bytes left the database may be unable to do anything. */
  private static final long LITTLE = 1_000_000;

  private static final String FULL = "cannot be written: the disk is full. Nothing was changed.";

  private static final String SYNCHRONOUS_FULL = "2";

  private Database() {}

  /** Opens the database and makes it first when there is none. */
  static Connection open(Path file) {
    if (!Files.exists(file)) {
      create(file);
    }
    return openExisting(file);
  }

  /** Opens a database that is there; one that is broken or not ours is left as it is. */
  static Connection openExisting(Path file) {
    try {
      recognise(file);
      return connect(file);
    } catch (SQLException e) {
      throw trouble(file, e);
    }
  }

  /** Looks at the file without any lock, log or change. */
  private static void recognise(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setOpenMode(SQLiteOpenMode.OPEN_URI);
    String url = "jdbc:sqlite:" + file.toUri() + "?immutable=1";
    try (Connection connection = DriverManager.getConnection(url, config.toProperties())) {
      if (!value(connection, "application_id").equals(String.valueOf(Schema.APPLICATION))) {
        throw Trouble.environment(
            file + " is the database of another program; it was left as it is.");
      }
    }
  }

  private static Connection connect(Path file) throws SQLException {
    Connection connection = connection(file);
    try {
      expect(connection, "journal_mode", "wal");
      expect(connection, "synchronous", SYNCHRONOUS_FULL);
      expect(connection, "foreign_keys", "1");
      int version = Integer.parseInt(value(connection, "user_version"));
      if (version > Schema.VERSION) {
        throw Trouble.environment(
            "%s was written by a newer Sheaf (format %d, this one knows %d): use that one."
                .formatted(file, version, Schema.VERSION));
      }
      if (version < Schema.VERSION) {
        update(connection);
      }
      return connection;
    } catch (SQLException | Trouble e) {
      connection.close();
      throw e;
    }
  }

  /**
   * Another process may have done it since the version was looked at; only one writes at a time.
   */
  private static void update(Connection connection) throws SQLException {
    connection.setAutoCommit(false);
    boolean done = false;
    try {
      if (Integer.parseInt(value(connection, "user_version")) < Schema.VERSION) {
        Schema.update(connection);
      }
      connection.commit();
      done = true;
    } finally {
      if (!done) {
        connection.rollback();
      }
      connection.setAutoCommit(true);
    }
  }

  private static Connection connection(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(PATIENCE);
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    return DriverManager.getConnection("jdbc:sqlite:" + file, config.toProperties());
  }

  private static void expect(Connection connection, String pragma, String wanted)
      throws SQLException {
    String found = value(connection, pragma);
    if (!found.equalsIgnoreCase(wanted)) {
      throw new SQLException(pragma + " is " + found + " where " + wanted + " is needed");
    }
  }

  private static String value(Connection connection, String pragma) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA " + pragma)) {
      row.next();
      return row.getString(1);
    }
  }

  /** Makes the database under another name and renames it, so that it is never seen half made. */
  private static synchronized void create(Path file) {
    Path lockFile = file.resolveSibling("creating.lock");
    Path partial = file.resolveSibling("creating.db");
    try (FileChannel channel =
            FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      if (lock.isValid() && !Files.exists(file)) {
        Files.deleteIfExists(partial);
        fill(partial);
        Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    } catch (SQLException e) {
      throw trouble(file, e);
    }
  }

  private static void fill(Path file) throws SQLException {
    try (Connection connection = connection(file)) {
      connection.setAutoCommit(false);
      Schema.create(connection);
      connection.commit();
    }
  }

  /** Why the database would not do something, as a sentence. */
  static Trouble trouble(Path file, SQLException e) {
    return Trouble.environment(file + " " + inWords(file, e), e);
  }

  private static String inWords(Path file, SQLException e) {
    SQLiteErrorCode code =
        e instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    // Extended codes carry the primary one in their lowest byte.
    return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
      case SQLITE_NOTADB -> "is no database; it was left as it is.";
      case SQLITE_CORRUPT -> "is damaged; nothing was changed. Put a copy of it in its place.";
      case SQLITE_FULL -> FULL;
      case SQLITE_BUSY, SQLITE_LOCKED -> "is held by another program: try again when it is done.";
      case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN ->
          "cannot be opened for writing: look at the permissions of the file and its folder.";
      case SQLITE_IOERR -> isFull(file) ? FULL : "cannot be used: the disk failed (" + code + ").";
      default -> "cannot be used: " + e.getMessage() + ".";
    };
  }

  /** A full disk shows in many ways, of which "full" is only one. */
  private static boolean isFull(Path file) {
    try {
      return Files.getFileStore(file.getParent()).getUsableSpace() < LITTLE;
    } catch (IOException e) {
      return false;
    }
  }
}
