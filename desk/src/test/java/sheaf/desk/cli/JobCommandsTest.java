package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;

/** What is done with a job that was read: show it, print its card. */
class JobCommandsTest {

  private static final String JOB = Pages.JOB.spoken();

  @TempDir Path folder;

  @BeforeEach
  void readASheet() {
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      store.file("pair.jpg", new byte[] {1}, List.of(Pages.pair(Pages.JOB, 2, 30, 12)), "0.1.0");
      store.file(
          "card.jpg", new byte[] {2}, List.of(Pages.benchCard(Pages.OTHER_JOB, 1, "sound")), "0");
    }
  }

  @Test
  void showTellsTheSheetsAndWhatTheyCameTo() {
    CommandRun run = CommandRun.of(folder, "show", JOB);
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("pair.jpg", "2 pair", "Job " + JOB, "Offset 32.3 mm");
  }

  @Test
  void showTellsTheBenchCard() {
    assertThat(CommandRun.of(folder, "show", Pages.OTHER_JOB.spoken()).out())
        .contains("Bench card\n", "not read: see the sheet");
  }

  @Test
  void showForProgramsIsOneObject() throws Exception {
    CommandRun run = CommandRun.of(folder, "show", "7g4kq 2m8xe o", "--json");
    assertThat(run.lines()).hasSize(1);
    assertThat(new ObjectMapper().readTree(run.out()).get("job").textValue()).isEqualTo(JOB);
  }

  @Test
  void cardIsAPdf() throws Exception {
    Path file = folder.resolve("card.pdf");
    CommandRun run = CommandRun.of(folder, "card", JOB, "-o", file.toString(), "--shop", "A shop");
    assertThat(run.status()).isZero();
    assertThat(run.err()).contains("Card of job " + JOB + " written to");
    assertThat(file).content(StandardCharsets.ISO_8859_1).startsWith("%PDF-");
  }

  @Test
  void cardWithoutAPairSheetSaysWhatIsMissing() {
    CommandRun run = CommandRun.of(folder, "card", Pages.OTHER_JOB.spoken(), "-o", "-");
    assertThat(run.status()).isZero();
    assertThat(run.out()).startsWith("%PDF-");
    assertThat(run.err().replace('\n', ' '))
        .contains("No pair sheet with both heads has been read yet; the card says so.");
  }

  @Test
  void recordLinkInTheOpenIsWarnedOf() {
    assertThat(
            CommandRun.of(
                    folder, "card", JOB, "-o", "-", "--record-address", "http://desk.example/b/")
                .err()
                .replace('\n', ' '))
        .contains("use https");
  }

  @Test
  void secretIsNeverSaid() {
    String key;
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      key = store.recordKey(Pages.JOB).orElseThrow().text();
    }
    CommandRun card =
        CommandRun.of(
            folder, "card", JOB, "-o", "-", "--record-address", "https://records.example/b/");
    CommandRun show = CommandRun.of(folder, "show", JOB, "--json");
    assertThat(card.err() + show.out() + show.err()).doesNotContain(key);
  }

  @ParameterizedTest
  @ValueSource(strings = {"show", "card"})
  void unknownJobIsSaid(String command) {
    assertMisuse(
        run(command, "00000-00001-1"),
        "sheaf: Job 00000-00001-1 is not known: none of its sheets has been read with 'sheaf read'.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"show", "card"})
  void whatIsNoJobIdIsSaid(String command) {
    assertMisuse(run(command, "hello"), "no job hello: ids look like 7G4KQ-2M8XE-0");
    assertMisuse(
        run(command, "7G4KQ-2M8XE-1"),
        "job 7G4KQ-2M8XE-1 is mistyped: its last symbol does not fit the others");
  }

  @Test
  void withoutAStoreNoneIsMade() {
    Path home = folder.resolve("new");
    assertMisuse(CommandRun.of(home, "show", JOB), "is not known");
    assertThat(home).doesNotExist();
  }

  @Test
  void shopAndAddressAreChecked() {
    assertMisuse(
        CommandRun.of(folder, "card", JOB, "-o", "-", "--shop", " "),
        "--shop must have 1 to 60 characters");
    assertMisuse(
        CommandRun.of(folder, "card", JOB, "-o", "-", "--record-address", "records"),
        "--record-address must be a web address");
  }

  @Test
  void wrongSettingIsNamedWithItsLine() throws Exception {
    Path settings = Files.writeString(folder.resolve("sheaf.properties"), "\npaper=leter\n");
    assertMisuse(
        CommandRun.of(folder, "card", JOB, "-o", "-"),
        "sheaf: " + settings + ", line 2: paper must be letter or a4, not 'leter'.");
  }

  private CommandRun run(String command, String job) {
    return command.equals("card")
        ? CommandRun.of(folder, command, job, "-o", "-")
        : CommandRun.of(folder, command, job);
  }

  private static void assertMisuse(CommandRun run, String complaint) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(complaint);
  }
}
