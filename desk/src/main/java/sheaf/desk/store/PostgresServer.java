package sheaf.desk.store;

import java.net.URI;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.postgresql.ds.PGSimpleDataSource;
import sheaf.desk.outcome.Trouble;

/**
 * A database on a PostgreSQL server, which many desks may share.
 *
 * @param address a JDBC address; a password is better left to the server's own password file
 * @param shared folder where the files that were read are kept; empty to keep them in the database
 */
record PostgresServer(String address, Optional<Path> shared) implements Engine {

  /** What addresses begin with. */
  static final String SCHEME = "jdbc:postgresql:";

  /** How long to wait for the server to answer at first, in seconds. */
  private static final int PATIENCE = 10;

  /** Another desk that is gone for so long, in seconds, is taken for dead. */
  private static final int DEAD_AFTER = 30;

  private static final String TRY_NEXT =
      "UPDATE scans SET tries = tries + 1 WHERE original = (SELECT original FROM scans"
          + " WHERE state = 'waiting' ORDER BY tries, arrived_at, original LIMIT 1"
          + " FOR UPDATE SKIP LOCKED) RETURNING original";

  /** Between both, another desk may have taken it. */
  private static final String LOCK =
      "SELECT original FROM scans WHERE original = ? AND state = 'waiting' FOR UPDATE SKIP LOCKED";

  private static final String UNDEFINED_TABLE = "42P01";

  /** Throws when it is no such address, in words that go behind "the store". */
  PostgresServer {
    if (!address.startsWith(SCHEME)) {
      throw new IllegalArgumentException(
          "must be an address such as jdbc:postgresql://server/sheaf, not '" + address + "'");
    }
  }

  @Override
  public boolean isThere() {
    return true;
  }

  @Override
  public Originals originals(Connection connection) {
    return shared.<Originals>map(FolderOfOriginals::new).orElse(new LargeObjects(connection));
  }

  @Override
  public String keepingOthersOut() {
    return " FOR UPDATE";
  }

  /**
   * The row is locked by a transaction in which all of the work is done, so that the server itself
   * lets go of it when this desk dies. That it was tried is committed before.
   */
  @Override
  public <T> Optional<T> withNextScan(Session session, OnScan<T> work) throws SQLException {
    while (true) {
      Optional<String> next = Sql.first(session.connection(), TRY_NEXT, row -> row.getString(1));
      if (next.isEmpty()) {
        return Optional.empty();
      }
      Optional<T> done =
          session.transaction(
              () ->
                  Sql.first(session.connection(), LOCK, row -> row.getString(1), next.get())
                          .isPresent()
                      ? Optional.of(work.run(next.get()))
                      : Optional.<T>empty());
      if (done.isPresent()) {
        return done;
      }
    }
  }

  @Override
  public Connection connect() {
    try {
      PGSimpleDataSource source = source();
      Connection connection = source.getConnection();
      try {
        prepare(connection);
        int version = version(connection);
        if (version > Migrations.VERSION) {
          throw Trouble.environment(
              "%s was written by a newer Sheaf (format %d, this one knows %d): use that one."
                  .formatted(name(), version, Migrations.VERSION));
        }
        if (version < Migrations.VERSION) {
          Migrations.run(source, "postgresql", 0);
        }
        return connection;
      } catch (SQLException | Trouble e) {
        connection.close();
        throw e;
      }
    } catch (SQLException e) {
      throw trouble(e);
    }
  }

  @Override
  public Connection snapshot() {
    try {
      Connection connection = source().getConnection();
      connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
      connection.setReadOnly(true);
      connection.setAutoCommit(false);
      return connection;
    } catch (SQLException e) {
      throw trouble(e);
    }
  }

  /** The server guards its own pages and references; files in it must have their object. */
  @Override
  public List<String> faults(Connection connection) throws SQLException {
    return Sql.list(
        connection,
        "SELECT sha256 FROM contents LEFT JOIN pg_largeobject_metadata AS m ON m.oid = object"
            + " WHERE m.oid IS NULL ORDER BY sha256 LIMIT 20",
        row -> "the large object of scan " + row.getString(1) + " is gone");
  }

  private PGSimpleDataSource source() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    try {
      source.setUrl(address);
    } catch (IllegalArgumentException e) {
      throw Trouble.misuse(name() + " is no address of a PostgreSQL database.");
    }
    source.setApplicationName("sheaf");
    source.setConnectTimeout(PATIENCE);
    source.setTcpKeepAlive(true);
    return source;
  }

  /**
   * Others' waiting ends, a commit is on the disk whatever the server usually does, and the server
   * lets go of what a desk held that lost its power (postgresql.org, "TCP Settings").
   */
  private static void prepare(Connection connection) throws SQLException {
    Sql.update(
        connection,
        "SET synchronous_commit = on; SET lock_timeout = '30s'; SET client_min_messages = warning;"
            // A scan is read in the transaction that holds it.
            + " SET idle_in_transaction_session_timeout = 0;"
            + " SET tcp_keepalives_idle = %1$d; SET tcp_keepalives_interval = 5;"
                .formatted(DEAD_AFTER)
            + " SET tcp_keepalives_count = 3");
  }

  /** The last script that was run; 0 where none was. */
  private static int version(Connection connection) throws SQLException {
    try {
      String sql =
          "SELECT version FROM "
              + Migrations.HISTORY
              + " WHERE success AND version IS NOT NULL ORDER BY installed_rank DESC LIMIT 1";
      return Sql.first(connection, sql, row -> row.getInt(1)).orElse(0);
    } catch (SQLException e) {
      if (UNDEFINED_TABLE.equals(e.getSQLState())) {
        return 0;
      }
      throw e;
    }
  }

  @Override
  public Trouble trouble(SQLException e) {
    return Trouble.environment(name() + " " + inWords(e), e);
  }

  /** Conditions by their class or code (postgresql.org, "PostgreSQL Error Codes"). */
  private static String inWords(SQLException e) {
    String state = e.getSQLState() == null ? "" : e.getSQLState();
    return switch (state) {
      case "53100" -> "cannot be written: the server's disk is full. Nothing was changed.";
      case "3D000" -> "is not there: make the database first, with createdb.";
      case "25006" -> "can only be read: it is a copy, or set so.";
      case "42501" -> "may not be used by this user: let it own the database.";
      case "55P03", "40001", "40P01" -> "is held by another desk: try again when it is done.";
      case "XX001", "XX002" ->
          "is damaged; nothing was changed. Put a backup in its place: sheaf restore FILE.";
      default -> byClass(state, e);
    };
  }

  private static String byClass(String state, SQLException e) {
    if (state.startsWith("08") || state.startsWith("57P")) {
      return "cannot be reached: see whether the server runs, and the network.";
    }
    if (state.startsWith("28")) {
      return "does not let this user in: look at name and password.";
    }
    return "cannot be used: " + e.getMessage().lines().findFirst().orElse(state) + ".";
  }

  /** The address without anything secret. */
  String name() {
    String plain = address.substring("jdbc:".length()).replaceFirst("\\?.*", "");
    try {
      URI uri = URI.create(plain);
      return uri.getHost() == null
          ? plain
          : "postgresql://" + uri.getRawAuthority().replaceFirst(".*@", "") + uri.getPath();
    } catch (IllegalArgumentException e) {
      return "postgresql";
    }
  }
}
