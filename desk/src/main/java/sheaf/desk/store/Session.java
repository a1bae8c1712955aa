package sheaf.desk.store;

import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Collection;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.desk.outcome.Trouble;

/** An open connection to a store, and how things are asked and changed there. */
final class Session implements AutoCloseable {

  private final StorePlace place;
  private final Engine engine;
  private final Connection connection;
  private final Originals originals;
  private final Clock clock;
  private final SecureRandom random = new SecureRandom();

  /** Some SQL. */
  @FunctionalInterface
  interface Work<T> {
    T run() throws SQLException;
  }

  /** Some additions. */
  @FunctionalInterface
  interface Additions<T> {
    T make(Change change) throws SQLException;
  }

  Session(StorePlace place, Engine engine, Clock clock) {
    this.place = place;
    this.engine = engine;
    this.clock = clock;
    this.connection = engine.connect();
    this.originals = engine.originals(connection);
  }

  Connection connection() {
    return connection;
  }

  Engine engine() {
    return engine;
  }

  Originals originals() {
    return originals;
  }

  Clock clock() {
    return clock;
  }

  StorePlace place() {
    return place;
  }

  /** Asks something. */
  <T> T query(Work<T> work) {
    try {
      return work.run();
    } catch (SQLException e) {
      throw engine.trouble(e);
    }
  }

  /** Does all of something or nothing; as a part of the transaction that is going on, if one is. */
  <T> T transaction(Work<T> work) {
    return query(() -> connection.getAutoCommit() ? begun(work) : work.run());
  }

  private <T> T begun(Work<T> work) throws SQLException {
    connection.setAutoCommit(false);
    boolean done = false;
    try {
      T result = work.run();
      connection.commit();
      done = true;
      return result;
    } finally {
      end(done);
    }
  }

  /** What broke a transaction off matters more than that it cannot be ended either. */
  private void end(boolean done) throws SQLException {
    try {
      if (!done) {
        connection.rollback();
      }
      connection.setAutoCommit(true);
    } catch (SQLException e) {
      if (done) {
        throw e;
      }
    }
  }

  /**
   * Adds something, all of it or nothing, under a revision.
   *
   * @param program that does it: a version
   * @param reason in words
   */
  <T> T change(String program, String reason, Additions<T> additions) {
    Change.Why why = new Change.Why(place.who(), program, reason);
    return transaction(() -> additions.make(new Change(this, clock.instant(), why)));
  }

  /** Opens jobs, each with a secret of its own. */
  void open(Change change, Collection<JobId> jobs) throws SQLException {
    change.jobs(jobs, this::newKey);
  }

  /** A secret that was never given before. */
  RecordKey newKey() {
    return RecordKey.random(random);
  }

  /** What is to be done before a file is kept in a transaction; its digest. */
  String keepBefore(byte[] content) {
    String digest = Originals.digest(content);
    originals.keepBefore(digest, content);
    return digest;
  }

  /** Keeps a file, in a transaction. */
  void keep(Change change, String digest, String name, byte[] content) throws SQLException {
    agreeOnOriginals();
    change.original(digest, name, content.length);
    originals.keepWithin(digest, content);
  }

  /** Something that holds for the whole store. */
  Optional<String> fact(String name) {
    return query(
        () ->
            Sql.first(
                connection,
                "SELECT value FROM facts WHERE name = ?",
                row -> row.getString(1),
                name));
  }

  /** Notes something that holds for the whole store. */
  void set(String name, String value) {
    query(
        () ->
            Sql.update(
                connection,
                "INSERT INTO facts (name, value) VALUES (?, ?)"
                    + " ON CONFLICT (name) DO UPDATE SET value = excluded.value",
                name,
                value));
  }

  /** All desks must keep files in one place, or none finds those of the others. */
  void agreeOnOriginals() throws SQLException {
    Sql.update(
        connection,
        "INSERT INTO facts (name, value) VALUES ('originals', ?) ON CONFLICT DO NOTHING",
        originals.kind());
    String agreed = fact("originals").orElseThrow();
    if (!agreed.equals(originals.kind())) {
      throw Trouble.misuse(
          agreed.equals("folder")
              ? "Other desks keep the scans of this store in a shared folder: name it in the shop profile as originals under [store]."
              : "Other desks keep the scans of this store in the database: set originals = \"database\" under [store] in the shop profile.");
    }
  }

  @Override
  public void close() {
    query(
        () -> {
          connection.close();
          return true;
        });
  }
}
