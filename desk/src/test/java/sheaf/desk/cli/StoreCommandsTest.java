package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.job.JobId;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;

/** Commands that look after the store: watch, find, jobs, bow, backup, restore, verify, export. */
class StoreCommandsTest {

  private static final String JOB = Pages.JOB.spoken();

  @TempDir Path folder;
  private Path home;
  private Path in;

  @BeforeEach
  void make() throws Exception {
    home = folder.resolve("home");
    in = Files.createDirectory(folder.resolve("in"));
  }

  private CommandRun run(String... words) {
    return CommandRun.of(home, Scanned.READER, words);
  }

  private void drop(String name, int... sheets) throws Exception {
    Files.write(in.resolve(name), Scanned.sheets(sheets));
  }

  private CommandRun watch() {
    return run("watch", in.toString(), "--once", "--readers", "1");
  }

  @Test
  void watchTellsALineAPageAndMovesTheFile() throws Exception {
    drop("a.png", 1);
    CommandRun run = watch();
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .isEqualTo("a.png  read  " + JOB + "  1 pair  3 field + 3 broadhead, 20 yd\n");
    assertThat(in.resolve("done/a.png")).exists();
    assertThat(watch().out()).isEmpty();
  }

  @Test
  void watchSaysWhatIsWrongWithAPage() throws Exception {
    drop("a.png", 0);
    CommandRun run = watch();
    assertThat(run.status()).isEqualTo(4);
    assertThat(run.out())
        .isEqualTo(
            "a.png  refused  Two register marks are seen, four are needed: photograph the whole sheet.\n");
    assertThat(in.resolve("doubt/a.png")).exists();
  }

  @Test
  void watchTellsOfFilesThatItLeaves() throws Exception {
    Files.writeString(in.resolve("list.txt"), "a shopping list");
    CommandRun run = watch();
    assertThat(run.status()).isZero();
    assertThat(run.err())
        .isEqualTo(
            "sheaf: "
                + in.resolve("list.txt")
                + " is no JPEG, PNG, TIFF or PDF; it is left where it is.\n");
  }

  @Test
  void watchTakesItsFolderFromTheProfile() throws Exception {
    Files.createDirectories(home);
    Files.writeString(home.resolve("sheaf.toml"), "[scans]\nfolder = '" + in + "'\n");
    drop("a.png", 1);
    assertThat(run("watch", "--once").out()).startsWith("a.png  read");
    CommandRun none = CommandRun.of(folder.resolve("elsewhere"), "watch", "--once");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).startsWith("sheaf: Which folder?");
  }

  @Test
  void jobIsListedAndFound() throws Exception {
    drop("a.png", 1);
    watch();
    assertThat(run("jobs", "--open").lines())
        .containsExactly(
            "Job            Day         Customer      Bow                     To do",
            JOB + "  2026-09-14  -             -                       print the card");
    assertThat(run("find", "7g4k", "2026-09").out()).contains(JOB);
    assertThat(run("find", "7g4k", "--json").out())
        .startsWith("{\"job\":\"" + JOB + "\",\"changed\":\"2026-09-14T16:30:00Z\"")
        .contains("\"missing\":[],\"doubts\":0,\"state\":\"card\"");
    CommandRun nothing = run("find", "7g4k", "crossbow");
    assertThat(nothing.status()).isZero();
    assertThat(nothing.out()).isEmpty();
    assertThat(nothing.err()).isEqualTo("No job has all of: 7g4k, crossbow.\n");
  }

  @Test
  void scansThatWaitAreMentioned() {
    try (Store store = Store.open(new HomeFolder(home), CommandRun.CLOCK)) {
      store.scans().arrive("a.png", Scanned.sheets(1), "0.1.0");
    }
    assertThat(run("jobs", "--open").err())
        .isEqualTo("Nothing is left to do.\n1 scan taken in and not read yet: sheaf watch.\n");
  }

  @Test
  void jobIsDoneWhenItsCardWasMade() throws Exception {
    drop("a.png", 1);
    watch();
    run("card", JOB, "-o", folder.resolve("card.pdf").toString());
    assertThat(run("jobs").out()).contains("done");
    assertThat(run("jobs", "--open").err()).isEqualTo("Nothing is left to do.\n");
  }

  @Test
  void sheetsThatWerePrintedAndNotReadAreMissing() throws Exception {
    CommandRun printed = run("print", "pack", "-o", folder.resolve("pack.pdf").toString());
    String job = printed.err().replaceAll("(?s).*job\\s+([0-9A-Z-]{13}).*", "$1");
    try (Store store = Store.open(new HomeFolder(home), CommandRun.CLOCK)) {
      store.file(
          "a.png",
          new byte[] {1},
          List.of(Pages.pair(JobId.parse(job).orElseThrow(), 6, 1, 1)),
          "0.1.0");
    }
    assertThat(run("jobs", "--open").out())
        .contains(job)
        .contains("sheets 1, 2, 3, 4, 5, 7 missing");
  }

  @Test
  void bowIsShownOverItsVisits() throws Exception {
    drop("a.png", 1);
    watch();
    try (Store store = Store.open(new HomeFolder(home), CommandRun.CLOCK)) {
      store.file("b.png", new byte[] {2}, List.of(Pages.pair(Pages.OTHER_JOB, 1, 0, 0)), "0.1.0");
    }
    assertThat(run("bow", JOB).out()).contains("1 visit");
    String both = run("bow", Pages.OTHER_JOB.spoken(), "--after", JOB).out();
    assertThat(both).contains("2 visits", "Since job " + JOB);
    assertThat(run("bow", JOB).out()).isEqualTo(both);
    assertThat(run("bow", JOB, "--after", JOB).err())
        .isEqualTo("sheaf: A visit cannot come after itself: --after takes another job.\n");
  }

  @Test
  void backupIsRestoredElsewhereAndBothAreSound() throws Exception {
    drop("a.png", 1, 2);
    watch();
    String file = folder.resolve("b.zip").toString();
    assertThat(run("backup", file).status()).isZero();
    Path other = folder.resolve("other");
    CommandRun restored = CommandRun.of(other, "restore", file);
    assertThat(restored.status()).isZero();
    CommandRun verified = CommandRun.of(other, "verify");
    assertThat(verified.status()).isZero();
    assertThat(verified.out())
        .isEqualTo("1 scan (0.0 MB) and 2 readings looked at: all is sound.\n");
    assertThat(CommandRun.of(other, "show", JOB).out()).isEqualTo(run("show", JOB).out());
    CommandRun again = CommandRun.of(other, "restore", file);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("--replace puts it aside first");
    assertThat(CommandRun.of(other, "restore", file, "--replace").err().replace('\n', ' '))
        .contains("What was there before is");
  }

  @Test
  void whatIsNotSoundIsNamedWithTheWayBack() throws Exception {
    drop("a.png", 1);
    watch();
    String file = folder.resolve("b.zip").toString();
    run("backup", file);
    try (Stream<Path> all = Files.walk(home.resolve("originals"))) {
      Files.delete(all.filter(Files::isRegularFile).findFirst().orElseThrow());
    }
    CommandRun verified = run("verify");
    assertThat(verified.status()).isEqualTo(1);
    assertThat(verified.err()).startsWith("sheaf: The scan a.png (").endsWith(") is gone.\n");
    assertThat(verified.out()).contains("1 fault. 'sheaf import' of a backup brings back");
    assertThat(run("import", file).status()).isZero();
    assertThat(run("verify").status()).isZero();
  }

  @Test
  void exportIsTakenInOnce() throws Exception {
    drop("a.png", 1);
    watch();
    String file = folder.resolve("all.zip").toString();
    run("export", file);
    Path other = folder.resolve("other");
    assertThat(CommandRun.of(other, "import", file).err())
        .contains("lines of ")
        .contains("taken in");
    assertThat(CommandRun.of(other, "import", file).err().replace('\n', ' '))
        .contains("nothing was changed");
  }

  @Test
  void tableForSpreadsheetsHasALineForEachValue() throws Exception {
    drop("a.png", 1);
    watch();
    Path file = folder.resolve("all.csv");
    run("export", file.toString());
    assertThat(Files.readAllLines(file)).first().isEqualTo("job,sheet,what,value,unit");
    assertThat(Files.readString(file)).contains(JOB + ",1,");
    CommandRun unknown = run("export", folder.resolve("all.doc").toString());
    assertThat(unknown.status()).isEqualTo(2);
    assertThat(unknown.err()).startsWith("sheaf: The file's name must end in .zip, .jsonl or .csv");
  }

  @Test
  void commandsSayWhereNothingWasEverKept() {
    List<List<String>> commands = new ArrayList<>();
    commands.add(List.of("verify"));
    commands.add(List.of("jobs"));
    commands.add(List.of("find", "x"));
    commands.add(List.of("backup", folder.resolve("b.zip").toString()));
    commands.add(List.of("export", folder.resolve("b.zip").toString()));
    for (List<String> words : commands) {
      CommandRun run = run(words.toArray(String[]::new));
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err())
          .isEqualTo("sheaf: There is no store in " + home + ": nothing was read yet.\n");
    }
  }

  @Test
  void storeMustBeAPostgresAddress() {
    CommandRun run = run("jobs", "--store", "mysql:x");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .startsWith(
            "sheaf: --store: must be an address such as jdbc:postgresql://server/sheaf, not 'mysql:x'");
  }
}
