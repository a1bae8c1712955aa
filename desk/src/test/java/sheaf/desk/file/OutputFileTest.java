package sheaf.desk.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

class OutputFileTest {

  @TempDir Path folder;

  @Test
  void fileIsWrittenAndReplaced() throws Exception {
    Path file = folder.resolve("card.pdf");
    OutputFile.write(file, out -> out.write('a'));
    OutputFile.write(file, out -> out.write('b'));
    assertThat(file).hasContent("b");
    assertThat(folder).isDirectoryContaining(file::equals).isDirectoryNotContaining("glob:**/.*");
  }

  @Test
  void olderFileStaysWhenWritingFailsMidway() throws Exception {
    Path file = Files.writeString(folder.resolve("card.pdf"), "older");
    assertThatThrownBy(
            () ->
                OutputFile.write(
                    file,
                    out -> {
                      out.write(new byte[100_000]);
                      throw new UncheckedIOException(new IOException("No space left on device"));
                    }))
        .isInstanceOf(Trouble.class)
        .hasMessage(file + " cannot be written: the disk is full.");
    assertThat(file).hasContent("older");
    assertThat(folder).isDirectoryNotContaining("glob:**/.*");
  }

  @Test
  void linkKeepsLeadingToTheFile() throws Exception {
    Path file = Files.writeString(folder.resolve("card.pdf"), "older");
    Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), file);
    OutputFile.write(link, out -> out.write('n'));
    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("n");
  }

  @Test
  void folderInPlaceOfAFileIsNamed() {
    assertTrouble(folder, folder + " is a folder: name a file in it.");
  }

  @Test
  void folderThatIsNotThereIsSaid() {
    Path file = folder.resolve("none").resolve("card.pdf");
    assertTrouble(file, file + " cannot be written: its folder is not there.");
  }

  @Test
  void fileInPlaceOfAFolderIsSaid() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "").resolve("card.pdf");
    assertTrouble(file, file + " cannot be written: a file is in the way where a folder must be.");
  }

  private static void assertTrouble(Path file, String sentence) {
    assertThatThrownBy(() -> OutputFile.write(file, out -> out.write('x')))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.ENVIRONMENT))
        .hasMessage(sentence);
  }
}
