package sheaf.desk.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import sheaf.desk.home.HomeFolder;

/** Databases of a real server, which is started once for all tests and ends with them. */
public final class PostgresDatabases {

  private static final AtomicInteger MADE = new AtomicInteger();

  private PostgresDatabases() {}

  /** Started by whoever asks first. */
  private static final class Server {
    static final EmbeddedPostgres RUNNING = start();

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.builder().setServerConfig("max_connections", "100").start();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The address of a new, empty database. */
  public static String address() {
    String name = "test" + MADE.incrementAndGet();
    try (Connection connection =
            DriverManager.getConnection(Server.RUNNING.getJdbcUrl("postgres", "postgres"));
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
    return Server.RUNNING.getJdbcUrl("postgres", name);
  }

  /** A new database, for a store whose home is in a folder. */
  static TestDatabase with(Path folder, Optional<Path> originals) {
    String address = address();
    return new TestDatabase(
        new StorePlace(
            new HomeFolder(folder.resolve("home")),
            Optional.of(address),
            originals,
            TestDatabase.WHO),
        address,
        List.of(
            "CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN"
                + " IF (SELECT count(*) FROM readings) = 1 THEN RAISE EXCEPTION 'x'; END IF;"
                + " RETURN NEW; END $$",
            "CREATE TRIGGER t BEFORE INSERT ON readings FOR EACH ROW EXECUTE FUNCTION refuse()"),
        "DROP TRIGGER t ON readings");
  }
}
