package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;

/** Stores that were made before there were scripts for their tables. */
class OlderStoreTest {

  private static final JobId JOB = JobId.parse("J452V-V4909-H").orElseThrow();

  @TempDir Path folder;
  private HomeFolder home;

  /** A store with two sheets of the sample job, made by the program of version 2. */
  @BeforeEach
  void copy() throws Exception {
    home = new HomeFolder(folder);
    try (InputStream made = OlderStoreTest.class.getResourceAsStream("version-2.db")) {
      Files.copy(made, home.database());
    }
  }

  @Test
  void storeOfTheSecondVersionKeepsWhatIsInIt() throws Exception {
    assertOpens();
  }

  /** The first version had no records, and all else alike. */
  @Test
  void storeOfTheFirstVersionKeepsWhatIsInIt() throws Exception {
    change("DROP TABLE records", "PRAGMA user_version = 1");
    assertOpens();
  }

  @Test
  void updateThatWasBrokenOffBeforeItWasNotedIsTakenUpAgain() throws Exception {
    Store.open(home, Clock.systemUTC()).close();
    change("PRAGMA user_version = 2");
    assertOpens();
  }

  private void assertOpens() throws Exception {
    try (Store store = Store.open(home, Clock.systemUTC())) {
      List<PageReading> readings = store.readings(JOB);
      assertThat(readings)
          .extracting(PageReading::source)
          .containsExactly("job-1-bench-card.jpg", "job-2-first-pair-backing.jpg");
      assertThat(store.recordKey(JOB)).isPresent();
      assertThat(store.imported(JOB)).isEmpty();
      PageReading more = Pages.pair(JOB, 3, 1, 1);
      store.file("more.jpg", new byte[] {1}, List.of(more), "0.1.0");
      assertThat(store.readings(JOB)).hasSize(3);
    }
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.database());
        Statement statement = connection.createStatement()) {
      assertThat(statement.executeQuery("PRAGMA user_version").getInt(1))
          .isEqualTo(Migrations.VERSION);
      assertThat(statement.executeQuery("PRAGMA integrity_check").getString(1)).isEqualTo("ok");
    }
  }

  private void change(String... statements) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.database());
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }
}
