package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

/** A store on a server, and servers that are not as they should be. */
class PostgresServerTest {

  @TempDir Path folder;

  private StorePlace place(String address, Optional<Path> originals) {
    return new StorePlace(
        new HomeFolder(folder.resolve("home")), Optional.of(address), originals, "a tester");
  }

  @Test
  void whatIsNoAddressIsRefused() {
    assertThatThrownBy(() -> StorePlace.address("postgres.example"))
        .hasMessage(
            "must be an address such as jdbc:postgresql://server/sheaf, not 'postgres.example'");
  }

  @Test
  void serverThatIsNotThereIsSaidWithoutThePassword() {
    StorePlace place =
        place("jdbc:postgresql://127.0.0.1:1/sheaf?user=t&password=hush", Optional.empty());
    assertThatThrownBy(() -> Store.open(place, Clock.systemUTC()))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.ENVIRONMENT))
        .hasMessage(
            "postgresql://127.0.0.1:1/sheaf cannot be reached: see whether the server runs, and the network.");
  }

  @Test
  @Tag("slow")
  void tablesAreMadeInAnEmptyDatabaseByOneOfManyDesks() throws Exception {
    StorePlace place = place(PostgresDatabases.bareAddress(), Optional.empty());
    List<Thread> desks =
        IntStream.range(0, 4)
            .mapToObj(i -> new Thread(() -> Store.open(place, Clock.systemUTC()).close()))
            .toList();
    desks.forEach(Thread::start);
    for (Thread desk : desks) {
      desk.join();
    }
    try (Store store = Store.open(place, Clock.systemUTC())) {
      assertThat(store.count()).isZero();
    }
  }

  @Test
  @Tag("slow")
  void databaseOfAnotherProgramIsLeftAsItIs() throws Exception {
    String address = PostgresDatabases.bareAddress();
    execute(address, "CREATE TABLE songs (title TEXT)");
    assertThatThrownBy(() -> Store.open(place(address, Optional.empty()), Clock.systemUTC()))
        .isInstanceOf(Trouble.class)
        .hasMessageContaining("has tables of another program");
    execute(address, "SELECT title FROM songs");
    assertThatThrownBy(() -> execute(address, "SELECT 1 FROM readings"))
        .isInstanceOf(SQLException.class);
  }

  @Test
  @Tag("slow")
  void storeOfANewerVersionIsRefused() throws Exception {
    String address = PostgresDatabases.address();
    execute(
        address,
        "INSERT INTO sheaf_history SELECT 99, '99', 'later', type, 'V99__later.sql', 1,"
            + " installed_by, installed_on, 1, true FROM sheaf_history WHERE version = '1'");
    assertThatThrownBy(() -> Store.open(place(address, Optional.empty()), Clock.systemUTC()))
        .hasMessageContaining("was written by a newer Sheaf (format 99");
  }

  /** One desk keeps scans in the database, another was told to use a folder. */
  @Test
  @Tag("slow")
  void desksMustKeepScansInOnePlace() {
    String address = PostgresDatabases.address();
    try (Store store = Store.open(place(address, Optional.empty()), Clock.systemUTC())) {
      store.scans().arrive("a.png", Scanned.sheets(1), "0.1.0");
    }
    StorePlace other = place(address, Optional.of(folder.resolve("shared")));
    try (Store store = Store.open(other, Clock.systemUTC())) {
      assertThatThrownBy(() -> store.scans().arrive("b.png", Scanned.sheets(2), "0.1.0"))
          .isInstanceOf(Trouble.class)
          .hasMessageContaining("set originals = \"database\"");
    }
  }

  /** The server ends the connection of a desk that is reading; another takes the scan over. */
  @Test
  @Tag("slow")
  void scanOfADeskThatDiedIsTakenOver() {
    String address = PostgresDatabases.address();
    StorePlace place = place(address, Optional.empty());
    try (Store dying = Store.open(place, Clock.systemUTC());
        Store other = Store.open(place, Clock.systemUTC())) {
      dying.scans().arrive("a.png", Scanned.sheets(1), "0.1.0");
      assertThatThrownBy(
              () ->
                  dying
                      .scans()
                      .readNext(
                          "0.1.0",
                          (name, content) -> {
                            assertThat(other.scans().readNext("0.1.0", Scanned::pages)).isEmpty();
                            endOthers(address);
                            return Scanned.pages(name, content);
                          }))
          .isInstanceOf(Trouble.class)
          .hasMessageContaining("cannot be reached");
    } catch (Trouble e) {
      // Both connections were ended.
      assertThat(e).hasMessageContaining("cannot be reached");
    }
    try (Store another = Store.open(place, Clock.systemUTC())) {
      assertThat(another.readings(Pages.JOB)).isEmpty();
      assertThat(another.scans().readNext("0.1.0", Scanned::pages)).isPresent();
      assertThat(another.readings(Pages.JOB)).hasSize(1);
    }
  }

  private static void endOthers(String address) {
    try {
      execute(
          address,
          "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
              + " WHERE application_name = 'sheaf' AND datname = current_database()");
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  private static void execute(String address, String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection(address);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
