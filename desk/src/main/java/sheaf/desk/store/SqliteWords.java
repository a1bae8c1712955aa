package sheaf.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import sheaf.desk.outcome.Trouble;

/** Says in words why SQLite would not do something. */
final class SqliteWords {

  /** With fewer bytes left the database may be unable to do anything. */
  private static final long LITTLE = 1_000_000;

  private static final String FULL = "cannot be written: the disk is full. Nothing was changed.";

  static final String DAMAGED =
      "is damaged; nothing was changed. Put a backup in its place: sheaf restore FILE.";

  private SqliteWords() {}

  /** Why the database in a file would not do something, as a sentence. */
  static Trouble trouble(Path file, SQLException e) {
    return Trouble.environment(file + " " + inWords(file, e), e);
  }

  private static String inWords(Path file, SQLException e) {
    SQLiteErrorCode code =
        e instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    // Extended codes carry the primary one in their lowest byte.
    return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
      case SQLITE_NOTADB -> "is no database; it was left as it is.";
      case SQLITE_CORRUPT -> DAMAGED;
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
