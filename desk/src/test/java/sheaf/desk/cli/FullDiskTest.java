package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;

/** A disk that is full, in memory and 1 MB small; only the system's administrator may make it. */
@Tag("slow")
class FullDiskTest {

  private static final FakeReader READER =
      new FakeReader().with("pair", Pages.pair(Pages.JOB, 2, 30, 12));

  @TempDir Path folder;
  private Path disk;

  @BeforeEach
  void mount() throws Exception {
    disk = Files.createDirectory(folder.resolve("disk"));
    boolean made =
        Files.isExecutable(Path.of("/bin/mount"))
            && run("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk.toString());
    assumeTrue(made, "a small disk cannot be made here");
  }

  @AfterEach
  void unmount() throws Exception {
    run("umount", disk.toString());
  }

  @Test
  void printingSaysItAndLeavesNothingBehind() throws Exception {
    Path file = disk.resolve("pad.pdf");
    CommandRun run =
        CommandRun.of(folder, "print", "pack", "--copies", "100", "-o", file.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).isEqualTo("sheaf: " + file + " cannot be written: the disk is full.\n");
    assertEmpty();
  }

  @Test
  void readingSaysItAndTheStoreGoesOnLater() throws Exception {
    Path home = disk.resolve("home");
    Path scan = Files.writeString(folder.resolve("scan.jpg"), "pair");
    assertThat(CommandRun.of(home, READER, "read", scan.toString()).status()).isZero();
    Path filler = fill();
    CommandRun full = CommandRun.of(home, READER, "read", scan.toString());
    assertThat(full.status()).isEqualTo(1);
    assertThat(full.err()).contains("the disk is full");
    Files.delete(filler);
    assertThat(CommandRun.of(home, "show", Pages.JOB.spoken()).out()).contains("Offset 32.3 mm");
    assertThat(CommandRun.of(home, READER, "read", scan.toString()).status()).isZero();
  }

  /** The scanner's folder has room, the store's disk has none: nothing is lost, and it goes on. */
  @Test
  void watchedFileStaysWhereItIsUntilThereIsRoom() throws Exception {
    Path home = disk.resolve("home");
    Path in = Files.createDirectory(folder.resolve("in"));
    Files.write(in.resolve("a.png"), Scanned.sheets(1));
    assertThat(watch(home, in).status()).isZero();
    Path filler = fill();
    Files.write(in.resolve("b.png"), Scanned.sheets(2));
    Watching watching = Watching.begin(home, in);
    watching.waitFor("the disk is full");
    assertThat(in.resolve("b.png")).exists();
    Files.delete(filler);
    watching.waitFor("b.png");
    watching.end();
    assertThat(watching.err()).containsOnlyOnce("sheaf:");
    assertThat(CommandRun.of(home, "verify").out()).contains("2 readings looked at: all is sound");
  }

  private static CommandRun watch(Path home, Path in) {
    return CommandRun.of(home, Scanned.READER, "watch", in.toString(), "--once");
  }

  @Test
  void importSaysItAndGoesOnLater() throws Exception {
    Path archive = archive(40);
    Path home = disk.resolve("home");
    assertThat(CommandRun.of(home, Scanned.READER, "read", scan(900).toString()).status()).isZero();
    Path filler = fill();
    CommandRun full = CommandRun.of(home, "import", archive.toString());
    assertThat(full.status()).isEqualTo(1);
    assertThat(full.err()).contains("the disk is full").hasLineCount(1);
    Files.delete(filler);
    assertThat(CommandRun.of(home, "import", archive.toString()).status()).isZero();
    assertThat(CommandRun.of(home, "verify").out()).contains("all is sound");
  }

  @Test
  void backupSaysItAndLeavesNothingBehind() throws Exception {
    Path home = folder.resolve("home");
    assertThat(CommandRun.of(home, Scanned.READER, "read", scan(1).toString()).status()).isZero();
    fill();
    Path file = disk.resolve("b.zip");
    CommandRun run = CommandRun.of(home, "backup", file.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).isEqualTo("sheaf: " + file + " cannot be written: the disk is full.\n");
    assertThat(file).doesNotExist();
  }

  @Test
  void storeThatCanOnlyBeReadIsSaidAndGoesOnLater() throws Exception {
    Path home = disk.resolve("home");
    assertThat(CommandRun.of(home, Scanned.READER, "read", scan(1).toString()).status()).isZero();
    assertThat(run("mount", "-o", "remount,ro", disk.toString())).isTrue();
    for (String[] words :
        new String[][] {
          {"read", scan(2).toString()},
          {"import", archive(3).toString()},
          {"show", Pages.JOB.spoken()}
        }) {
      CommandRun refused = CommandRun.of(home, Scanned.READER, words);
      assertThat(refused.status()).as(words[0]).isEqualTo(1);
      assertThat(refused.err())
          .as(words[0])
          .startsWith("sheaf: ")
          .containsAnyOf("cannot be opened for writing", "read-only file system")
          .hasLineCount(1);
    }
    assertThat(run("mount", "-o", "remount,rw", disk.toString())).isTrue();
    assertThat(CommandRun.of(home, Scanned.READER, "read", scan(2).toString()).status()).isZero();
    assertThat(CommandRun.of(home, "verify").out()).contains("2 readings looked at: all is sound");
  }

  private Path scan(int sheet) throws IOException {
    return Files.write(folder.resolve("scan" + sheet + ".png"), Scanned.sheets(sheet));
  }

  private Path archive(int sheets) throws Exception {
    Path source = folder.resolve("source");
    for (int i = 1; i <= sheets; i += 8) {
      int first = i;
      int[] some = IntStream.range(first, first + 8).toArray();
      Path file = Files.write(folder.resolve("stack" + i + ".png"), Scanned.sheets(some));
      CommandRun.of(source, Scanned.READER, "read", file.toString());
    }
    Path archive = folder.resolve("all.zip");
    assertThat(CommandRun.of(source, "export", archive.toString()).status()).isZero();
    return archive;
  }

  private Path fill() throws Exception {
    Path filler = disk.resolve("filler");
    try (OutputStream out = Files.newOutputStream(filler)) {
      while (true) {
        out.write(new byte[4096]);
      }
    } catch (IOException full) {
      assertThat(full).hasMessageContaining("No space left");
    }
    return filler;
  }

  private void assertEmpty() throws Exception {
    try (Stream<Path> files = Files.list(disk)) {
      assertThat(files).isEmpty();
    }
  }

  private static boolean run(String... words) throws Exception {
    Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
    process.getInputStream().readAllBytes();
    return process.waitFor() == 0;
  }
}
