package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store.Filing;

/** What becomes of the store when a process that writes it is killed. */
class CrashTest {

  private static final int ROUNDS = 5;

  @TempDir Path folder;

  @Test
  void processThatDiesMidwayLeavesNothingHalfDone() throws Exception {
    Process process = start("halt");
    assertThat(acknowledged(process, Integer.MAX_VALUE)).isEmpty();
    assertThat(process.waitFor()).isEqualTo(9);
    assertThat(integrity()).isEqualTo("ok");
    try (Store store = open()) {
      assertThat(store.readings(Pages.JOB)).isEmpty();
      assertThat(store.recordKey(Pages.JOB)).isEmpty();
      assertThat(
              store.file(
                  "scan.jpg",
                  FilingProcess.content(1),
                  List.of(Pages.pair(Pages.JOB, 1, 0, 0)),
                  "0.1.0"))
          .isEqualTo(Filing.NEW);
    }
  }

  /** Whatever was said to be filed is there, however often and wherever the process is killed. */
  @Test
  @Tag("slow")
  void whatWasAcknowledgedOutlastsBeingKilled() throws Exception {
    for (int round = 1; round <= ROUNDS; round++) {
      Process process = start("endless");
      List<Integer> filed = acknowledged(process, 7 * round);
      process.destroyForcibly().waitFor();
      assertThat(integrity()).isEqualTo("ok");
      try (Store store = open()) {
        assertThat(
                store.readings(Pages.JOB).stream().map(page -> page.sheet().orElseThrow().number()))
            .containsAll(filed);
      }
      for (int number : filed) {
        String digest = Originals.digest(FilingProcess.content(number));
        assertThat(new FolderOfOriginals(home().originals()).place(digest))
            .hasBinaryContent(FilingProcess.content(number));
      }
    }
  }

  private HomeFolder home() {
    return new HomeFolder(folder.resolve("home"));
  }

  private Store open() {
    return Store.open(home(), Clock.systemUTC());
  }

  private Process start(String how) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            FilingProcess.class.getName(),
            home().path().toString(),
            how)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** The numbers that the process says until it ends, or the first few. */
  private static List<Integer> acknowledged(Process process, int most) throws IOException {
    List<Integer> numbers = new ArrayList<>();
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      numbers.add(Integer.valueOf(line));
      if (numbers.size() == most) {
        break;
      }
    }
    return numbers;
  }

  private String integrity() throws SQLException {
    try (Connection connection = new SqliteFile(home().database(), home().originals()).connect();
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA integrity_check")) {
      return row.getString(1);
    }
  }
}
