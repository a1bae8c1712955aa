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

  /** A database with all tables, which takes longer to make than to copy. */
  private static final class Template {
    static final String NAME = made();

    private static String made() {
      String name = "template_of_ours";
      String address = create(name, "template1");
      try (Connection connection = new PostgresServer(address, Optional.empty()).connect()) {
        return connection.isClosed() ? "" : name;
      } catch (SQLException e) {
        throw new AssertionError(e);
      }
    }
  }

  /** The address of a new store without anything in it. */
  public static String address() {
    return create("test" + MADE.incrementAndGet(), Template.NAME);
  }

  /** The address of a new database without any table. */
  static String bareAddress() {
    return create("bare" + MADE.incrementAndGet(), "template1");
  }

  private static String create(String name, String template) {
    try (Connection connection =
            DriverManager.getConnection(Server.RUNNING.getJdbcUrl("postgres", "postgres"));
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name + " TEMPLATE " + template);
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
    return Server.RUNNING.getJdbcUrl("postgres", name);
  }

  /** Runs a server until it is killed, and says the address of a new database: for benchmarks. */
  public static void main(String[] arguments) throws InterruptedException {
    System.out.println(bareAddress());
    Thread.currentThread().join();
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
