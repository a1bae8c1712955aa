package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.scanner.SheetReader;

class DemoCommandTest {

  @TempDir Path folder;

  @Test
  @Tag("slow")
  void everySampleEndsAsItShouldAndTheCardIsPrinted() throws Exception {
    Path out = folder.resolve("out");
    CommandRun run =
        CommandRun.of(
            folder.resolve("home"), new SheetReader()::read, "demo", "--out", out.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("True x, y", "Try next:", "card.pdf");
    assertThat(out)
        .isDirectoryContaining("glob:**/pack.pdf")
        .isDirectoryContaining("glob:**/card.pdf");
    assertThat(out.resolve("proofs")).isNotEmptyDirectory();
    assertThat(folder.resolve("home")).doesNotExist();
  }

  @Test
  void sampleThatDoesNotReadIsSaid() throws Exception {
    Path out = folder.resolve("out");
    CommandRun run =
        CommandRun.of(folder.resolve("home"), new FakeReader(), "demo", "--out", out.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).startsWith("sheaf: A sample did not read as it should");
    assertThat(run.out()).contains("refused, not");
    assertThat(Files.exists(out.resolve("card.pdf"))).isFalse();
  }
}
