package sheaf.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import sheaf.desk.file.OutputFile;
import sheaf.desk.outcome.Trouble;

/**
 * Makes a store anew from a backup.
 *
 * @param rows how many were taken in
 * @param aside where the database is now that was there before
 */
public record Restoring(int rows, Optional<Path> aside) {

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

  /**
   * Restores a backup where there is no store, or in place of one that is put aside. The new
   * database is made and looked through under another name first.
   *
   * @param place where to
   * @param file the backup
   * @param replace whether a database that is there may be put aside
   * @throws Trouble when something is there, or the backup is not whole
   */
  public static Restoring from(StorePlace place, Path file, boolean replace, Clock clock) {
    try (ArchiveFile archive = ArchiveFile.open(file)) {
      return place.address().isPresent()
          ? onServer(place, archive, clock)
          : inFolder(place, archive, replace, clock);
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private static Restoring onServer(StorePlace place, ArchiveFile archive, Clock clock)
      throws IOException {
    try (Session session = new Session(place, place.engine(), clock)) {
      boolean empty =
          session.query(
              () ->
                  Sql.first(session.connection(), "SELECT 1 FROM originals LIMIT 1", row -> true)
                      .isEmpty());
      if (!empty) {
        throw Trouble.misuse(
            "There is a store in that database already: restore to a new, empty one, or add to it with 'sheaf import'.");
      }
      int rows = ArchiveImport.run(session, archive);
      refuseUnsound(session);
      restoreProfile(place, archive);
      return new Restoring(rows, Optional.empty());
    }
  }

  private static Restoring inFolder(
      StorePlace place, ArchiveFile archive, boolean replace, Clock clock) throws IOException {
    Path database = place.home().database();
    if (Files.exists(database) && !replace) {
      throw Trouble.misuse(
          "There is a store in "
              + database
              + " already: --replace puts it aside first; 'sheaf import' adds to it instead.");
    }
    place.home().create();
    Path partial = database.resolveSibling("restoring.db");
    remove(partial);
    Path originals = place.originals().orElse(place.home().originals());
    int rows;
    try (Session session = new Session(place, new SqliteFile(partial, originals), clock)) {
      rows = ArchiveImport.run(session, archive);
      refuseUnsound(session);
    }
    Optional<Path> aside =
        Files.exists(database) ? Optional.of(putAside(database, clock)) : Optional.empty();
    Files.move(partial, database, StandardCopyOption.ATOMIC_MOVE);
    restoreProfile(place, archive);
    return new Restoring(rows, aside);
  }

  /** One that is there is left as it is. */
  private static void restoreProfile(StorePlace place, ArchiveFile archive) throws IOException {
    Path profile = place.home().profile();
    Optional<byte[]> kept = archive.profile();
    if (kept.isPresent() && !Files.exists(profile)) {
      OutputFile.write(profile, out -> out.write(kept.get()));
    }
  }

  private static void refuseUnsound(Session session) {
    Verification found =
        session.transaction(
            () ->
                Verification.of(
                    session.engine(), session.connection(), session.originals(), bytes -> {}));
    if (!found.isSound()) {
      throw Trouble.refused("The backup is not whole. " + found.faults().get(0));
    }
  }

  /** The log goes with its database: whatever is not in the file yet is in there. */
  private static Path putAside(Path database, Clock clock) throws IOException {
    Path aside =
        database.resolveSibling(database.getFileName() + ".aside-" + STAMP.format(clock.instant()));
    for (String end : List.of("-wal", "-shm", "")) {
      Path file = database.resolveSibling(database.getFileName() + end);
      if (Files.exists(file)) {
        Files.move(file, aside.resolveSibling(aside.getFileName() + end));
      }
    }
    return aside;
  }

  private static void remove(Path database) throws IOException {
    for (String end : List.of("", "-wal", "-shm")) {
      Files.deleteIfExists(database.resolveSibling(database.getFileName() + end));
    }
  }
}
