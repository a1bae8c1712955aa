package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day's pad is printed by a program of its own, which has little memory. */
@Tag("slow")
class PadMemoryTest {

  private static final int JOBS = 600;
  private static final int PAGES_OF_A_JOB = 7;
  private static final int MOST_BYTES_A_PAGE = 12_000;

  @TempDir Path folder;

  @Test
  void thousandsOfPagesArePrintedWith32MegabytesOfHeap() throws Exception {
    // All contents of so many pages at once would take more than twice as much.
    Path pad = folder.resolve("pad.pdf");
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx32m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "print",
                "pack",
                "--jobs",
                String.valueOf(JOBS),
                "--sides",
                "one",
                "--home",
                folder.resolve("home").toString(),
                "-o",
                pad.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(program.waitFor()).as(said).isZero();
    assertThat(Files.size(pad) / (JOBS * PAGES_OF_A_JOB)).isLessThan(MOST_BYTES_A_PAGE);
    assertThat(said.replaceAll("\\s+", " ")).contains("600 packs", "4200 pages");
  }
}
