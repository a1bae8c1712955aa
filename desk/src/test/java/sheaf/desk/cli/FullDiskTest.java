package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;

/** A disk that is full, in memory and 256 kB small; only the system's administrator may make it. */
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
            && run("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", disk.toString());
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
