package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.desk.outcome.Trouble;

/**
 * Scans that were taken in and wait to be read, by whichever desk has time for them.
 *
 * <p>A scan is known by its content: one that comes again is not read again, unless by another
 * version. What was read and that it was read are kept in one transaction, so that no scan is ever
 * lost, nor counted twice, at whatever moment a desk dies.
 */
public final class Scans {

  /** A scan that so many readers broke off at is left to a person. */
  static final int MOST_TRIES = 20;

  private static final Reason BROKEN_OFF =
      Reason.of(
          ReasonCode.READER_FAULT,
          "Sheaf was broken off each time it read this file: scan or photograph its sheets again, and report the fault with this file.");

  private final Session session;

  /** What became of a scan. */
  public enum State {
    /** Nobody has read it yet. */
    WAITING("waiting"),
    /** Every page was read. */
    DONE("done"),
    /** Some page was refused or needs a person's look. */
    DOUBT("doubt");

    private final String label;

    State(String label) {
      this.label = label;
    }

    private static State of(String label) {
      return List.of(values()).stream()
          .filter(state -> state.label.equals(label))
          .findFirst()
          .orElseThrow();
    }
  }

  /** Reads the pages of a scan. */
  @FunctionalInterface
  public interface Reader {
    /** All pages, in order; a page or file that cannot be read is a refused page. */
    List<PageReading> read(String name, byte[] content);
  }

  /**
   * A scan that was read and filed.
   *
   * @param name the file's name, without folders
   * @param pages what they said
   * @param state what became of it
   * @param isNew whether any page said something that was not known
   */
  public record Filed(String name, List<PageReading> pages, State state, boolean isNew) {}

  Scans(Session session) {
    this.session = session;
  }

  /**
   * Takes a scan in; when this returns, it is kept.
   *
   * @param name the file's name, without folders
   * @param content the file, byte for byte
   * @param program that will read it: a version
   * @return what became of it; {@link State#WAITING} when it is to be read
   */
  public State arrive(String name, byte[] content, String program) {
    String digest = session.keepBefore(content);
    return session.change(
        program,
        "took in " + name,
        change -> {
          session.keep(change, digest, name, content);
          Sql.update(
              session.connection(),
              "INSERT INTO scans (original, arrived_at, state) VALUES (?, ?, 'waiting')"
                  + " ON CONFLICT DO NOTHING",
              digest,
              change.now());
          Sql.update(
              session.connection(),
              "UPDATE scans SET state = 'waiting', tries = 0 WHERE original = ?"
                  + " AND state <> 'waiting' AND read_by <> ?",
              digest,
              program);
          return state(digest).orElseThrow();
        });
  }

  /** Under which name a scan's state is asked for: its digest. */
  public static String digest(byte[] content) {
    return Originals.digest(content);
  }

  /** What became of a scan; empty when it was not taken in. */
  public Optional<State> state(String digest) {
    return session.query(
        () ->
            Sql.first(
                session.connection(),
                "SELECT state FROM scans WHERE original = ?",
                row -> State.of(row.getString(1)),
                digest));
  }

  /** How many scans wait. */
  public int waiting() {
    return session.query(
        () ->
            Sql.first(
                    session.connection(),
                    "SELECT count(*) FROM scans WHERE state = 'waiting'",
                    row -> row.getInt(1))
                .orElse(0));
  }

  /**
   * Reads the scan that waits longest and that nobody has in hand, and files it.
   *
   * @param program that reads: a version
   * @return what was filed, safely by now; empty when there is nothing to read
   */
  public Optional<Filed> readNext(String program, Reader reader) {
    return session.query(
        () -> session.engine().withNextScan(session, scan -> read(scan, program, reader)));
  }

  private Filed read(String digest, String program, Reader reader) throws SQLException {
    record Scan(String name, int tries) {}
    Scan scan =
        Sql.first(
                session.connection(),
                "SELECT name, tries FROM scans JOIN originals ON sha256 = original"
                    + " WHERE original = ?",
                row -> new Scan(row.getString(1), row.getInt(2)),
                digest)
            .orElseThrow();
    List<PageReading> pages =
        scan.tries() > MOST_TRIES
            ? List.of(PageReading.refused(scan.name(), BROKEN_OFF))
            : reader.read(scan.name(), content(digest));
    boolean sure = pages.stream().allMatch(page -> page.state() == ReadingState.READ);
    State state = sure ? State.DONE : State.DOUBT;
    boolean isNew =
        session.change(
            program,
            "read " + scan.name(),
            change -> {
              boolean added = PageFiling.add(session, change, digest, scan.name(), pages);
              Sql.update(
                  session.connection(),
                  "UPDATE scans SET state = ?, read_by = ? WHERE original = ?",
                  state.label,
                  program,
                  digest);
              return added;
            });
    return new Filed(scan.name(), pages, state, isNew);
  }

  private byte[] content(String digest) throws SQLException {
    try (InputStream in = session.originals().open(digest)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw Trouble.cannotRead("The scan " + digest, e);
    }
  }
}
