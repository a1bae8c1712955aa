package sheaf.desk.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.LongConsumer;
import sheaf.desk.outcome.Trouble;

/**
 * Copies of all that a store keeps, and whether it is sound. An archive can be taken in by any
 * store, whichever database is behind it.
 */
public final class Archives {

  private static final String BACKUP = "backup";

  private final Session session;

  Archives(Session session) {
    this.session = session;
  }

  /**
   * Writes all that is kept, as it is at this moment, as an archive; others may go on writing.
   *
   * @param progress hears of how many files were written
   * @return how many files
   */
  public int write(OutputStream out, IntConsumer progress) throws IOException {
    Path profile = session.place().home().profile();
    return onSnapshot(
        (snapshot, originals) -> Archive.write(snapshot, originals, profile, out, progress));
  }

  /** Notes that everything was copied just now. */
  public void backedUp() {
    session.set(BACKUP, session.clock().instant().toString());
  }

  /** When everything was copied last; empty when it never was. */
  public Optional<Instant> lastBackup() {
    return session.fact(BACKUP).map(Instant::parse);
  }

  /** Writes the lines of an archive without the files; says how many. */
  public int writeLines(OutputStream out) throws IOException {
    return onSnapshot((snapshot, originals) -> Archive.writeLines(snapshot, originals, out));
  }

  /** Whether a file is an archive of a store, by its first bytes. */
  public static boolean isOne(Path file) {
    return ArchiveFile.isArchive(file);
  }

  /** Adds what an archive holds and this store does not; says how many rows. */
  public int takeIn(Path file) {
    try (ArchiveFile archive = ArchiveFile.open(file)) {
      return ArchiveImport.run(session, archive);
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  /**
   * Looks at everything: the database itself, every reading and record, every file.
   *
   * @param progress hears of how many bytes were looked at
   */
  public Verification verify(LongConsumer progress) throws IOException {
    return onSnapshot(
        (snapshot, originals) -> Verification.of(session.engine(), snapshot, originals, progress));
  }

  /** Something to do at one moment of the store. */
  @FunctionalInterface
  private interface AtOneMoment<T> {
    T run(Connection snapshot, Originals originals) throws SQLException, IOException;
  }

  private <T> T onSnapshot(AtOneMoment<T> work) throws IOException {
    Engine engine = session.engine();
    try (Connection snapshot = engine.snapshot()) {
      return work.run(snapshot, engine.originals(snapshot));
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }
}
