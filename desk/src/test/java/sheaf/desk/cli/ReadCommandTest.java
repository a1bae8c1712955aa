package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.ReasonCode;
import sheaf.desk.Pages;
import sheaf.desk.json.PageJson;

class ReadCommandTest {

  private static final FakeReader READER =
      new FakeReader()
          .with("pair", Pages.pair(Pages.JOB, 2, 30, 12))
          .with(
              "doubt",
              Pages.doubted(Pages.pair(Pages.JOB, 3, 5, 5), ReasonCode.HEAD_UNSURE, "Look at it."))
          .with(
              "stack",
              Pages.benchCard(Pages.OTHER_JOB, 1, "sound"),
              Pages.pair(Pages.OTHER_JOB, 2, 1, 1));

  @TempDir Path folder;

  @Test
  void everyPageIsALineOfJsonInOrder() throws Exception {
    CommandRun run = read("--json", file("a.pdf", "stack"), file("b.jpg", "pair"));
    assertThat(run.lines()).hasSize(3);
    assertThat(run.lines().stream().map(PageJson::parse).map(page -> page.source()))
        .containsExactly(
            folder.resolve("a.pdf") + "#1",
            folder.resolve("a.pdf") + "#2",
            folder.resolve("b.jpg").toString());
    assertThat(run.err()).isEmpty();
  }

  @Test
  void profileSaysHowSureNumbersMustBe() throws Exception {
    Path home = folder.resolve("shop");
    CommandRun.of(home, "profile", "new");
    Files.writeString(home.resolve("sheaf.toml"), "[reading]\nsure = 0.97\n");
    List<Double> asked = new ArrayList<>();
    CommandRun.reading(
        home,
        sure -> {
          asked.add(sure);
          return READER;
        },
        "read",
        file("b.jpg", "pair"));
    assertThat(asked).containsExactly(0.97);
  }

  @Test
  void exitStatusTellsTheWorstState() throws Exception {
    String read = file("read.jpg", "pair");
    String check = file("check.jpg", "doubt");
    String refused = file("refused.jpg", "?");
    String missing = folder.resolve("missing.jpg").toString();
    assertThat(read(read).status()).isZero();
    assertThat(read(read, check).status()).isEqualTo(3);
    assertThat(read(refused, check, read).status()).isEqualTo(4);
    assertThat(read(missing, refused, check).status()).isEqualTo(2);
  }

  @Test
  void otherFilesAreReadWhenOneIsMissing() throws Exception {
    String missing = folder.resolve("missing.jpg").toString();
    CommandRun run = read("--json", missing, file("b.jpg", "pair"));
    assertThat(run.err()).isEqualTo("sheaf: There is no file " + missing + ".\n");
    assertThat(run.lines()).hasSize(1);
  }

  @Test
  void peopleSeeATableAndWhatTheJobCameTo() throws Exception {
    CommandRun run = read(file("b.jpg", "pair"));
    assertThat(run.out())
        .startsWith("Page   State  Job            Sheet   Found\n")
        .contains("b.jpg  read   7G4KQ-2M8XE-0  2 pair  3 field + 3 broadhead, 20 yd\n")
        .contains("\n\nJob 7G4KQ-2M8XE-0\n")
        .contains("Offset 32.3 mm")
        .contains("Next: sheaf card");
  }

  @Test
  void resultTakesEarlierReadingsOfTheJobIn() throws Exception {
    read(file("b.jpg", "pair"));
    assertThat(read(file("c.jpg", "doubt")).out()).contains("Sheet 2, pair", "Sheet 3, pair");
  }

  @Test
  void refusedPagesTouchNoJob() throws Exception {
    CommandRun run = read(file("bad.jpg", "?"));
    assertThat(run.out()).contains("refused", "photograph the whole sheet").doesNotContain("Next:");
  }

  @Test
  void proofsAreNamedAfterTheirPages() throws Exception {
    Path proofs = folder.resolve("look");
    Files.createDirectories(folder.resolve("other"));
    CommandRun run =
        read(
            "--proof",
            proofs.toString(),
            file("a b.pdf", "stack"),
            file("c.jpg", "pair"),
            file("other/c.jpg", "doubt"),
            file("bad.jpg", "?"));
    assertThat(run.status()).isEqualTo(4);
    try (var files = Files.list(proofs)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "a_b.pdf-1.proof.jpg", "a_b.pdf-2.proof.jpg", "c.jpg.proof.jpg", "c.jpg~2.proof.jpg");
    }
    assertThat(proofs.resolve("c.jpg.proof.jpg")).hasBinaryContent(FakeReader.PICTURE);
  }

  @Test
  void proofFolderThatCannotBeMadeIsSaidBeforeAnythingIsRead() throws Exception {
    String inTheWay = file("look", "a file");
    CommandRun run = read("--proof", inTheWay, file("b.jpg", "pair"));
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo(
            "sheaf: "
                + inTheWay
                + " cannot be written: a file is in the way where a folder must be.\n");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void whatWasReadIsToldWhenTheStoreFailsMidway() throws Exception {
    Path home = folder.resolve("home");
    Files.createDirectories(home);
    Files.createFile(home.resolve("originals"));
    CommandRun run = read(file("b.jpg", "pair"));
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("b.jpg  read");
    assertThat(run.err()).contains("a file is in the way where a folder must be");
  }

  @Test
  void brokenStoreIsSaidBeforeAnythingIsRead() throws Exception {
    Path home = Files.createDirectories(folder.resolve("home"));
    Path database = Files.writeString(home.resolve("sheaf.db"), "rubbish ".repeat(100));
    CommandRun run = read("--json", file("b.jpg", "pair"));
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo("sheaf: " + database + " is no database; it was left as it is.\n");
  }

  @Test
  void faultOfOurOwnIsASentenceAndAFile() throws Exception {
    CommandRun run =
        CommandRun.of(
            folder.resolve("home"),
            (name, file, proof, pages) -> {
              throw new IllegalStateException("invented");
            },
            "read",
            file("b.jpg", "pair"));
    Path kept = folder.resolve("home").resolve("last-fault.txt");
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo(
            "sheaf: a fault in Sheaf itself stopped it: java.lang.IllegalStateException: invented."
                + " Please report it with the file "
                + kept
                + ".\n");
    assertThat(kept).content().contains("at sheaf.desk.cli");
  }

  private String file(String name, String content) throws Exception {
    return Files.writeString(folder.resolve(name), content).toString();
  }

  private CommandRun read(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "read";
    System.arraycopy(words, 0, all, 1, words.length);
    return CommandRun.of(folder.resolve("home"), READER, all);
  }
}
