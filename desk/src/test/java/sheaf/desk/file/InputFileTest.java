package sheaf.desk.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

class InputFileTest {

  @TempDir Path folder;

  @Test
  void contentIsTakenWhole() throws Exception {
    Path file = Files.write(folder.resolve("scan.jpg"), new byte[] {1, 2, 3});
    assertThat(InputFile.content(file)).containsExactly(1, 2, 3);
  }

  @Test
  void emptyFileIsNoTrouble() throws Exception {
    assertThat(InputFile.content(Files.createFile(folder.resolve("scan.jpg")))).isEmpty();
  }

  @Test
  void missingFileIsNamed() {
    Path file = folder.resolve("none.jpg");
    assertMisuse(file, "There is no file " + file + ".");
  }

  @Test
  void folderIsNamedWithWhatToDo() {
    assertMisuse(
        folder, folder + " is a folder: name the files in it, such as " + folder + "/*.jpg.");
  }

  @Test
  void largeFileIsRefusedBeforeItIsRead() throws Exception {
    Path file = folder.resolve("large.pdf");
    // A file with a hole in it: it takes no room on the disk.
    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength(InputFile.MOST_BYTES + 1_000_000);
    }
    assertMisuse(
        file,
        file + " has more than the 200 MB that are taken in at once: scan fewer pages to a file.");
  }

  @Test
  void streamWithoutAnEndIsBrokenOff() {
    Path endless = Path.of("/dev/zero");
    assumeTrue(Files.exists(endless));
    assertMisuse(
        endless,
        "/dev/zero has more than the 200 MB that are taken in at once: scan fewer pages to a file.");
  }

  private static void assertMisuse(Path file, String sentence) {
    assertThatThrownBy(() -> InputFile.content(file))
        .isInstanceOfSatisfying(
            Trouble.class, trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.MISUSE))
        .hasMessage(sentence);
  }
}
