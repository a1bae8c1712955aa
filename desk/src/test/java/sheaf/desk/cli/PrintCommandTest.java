package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintCommandTest {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"pair", "bench-card", "pack", "backing"})
  void everyPaperIsPrinted(String what) throws Exception {
    Path file = folder.resolve("out.pdf");
    CommandRun run = print(what, "-o", file.toString());
    assertThat(run.status()).isZero();
    assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    assertThat(run.err()).contains("on letter paper").contains("Print at 100 %");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void standardOutputGetsThePdfAndNothingElse() {
    CommandRun run =
        print("pair", "--dots", "one", "--paper", "a4", "--units", "metric", "-o", "-");
    assertThat(run.status()).isZero();
    assertThat(run.out()).startsWith("%PDF-");
    assertThat(run.err()).contains("pair sheet on a4 paper");
  }

  @Test
  void settingsChooseThePaper() throws Exception {
    Files.writeString(folder.resolve("sheaf.properties"), "paper=a4\n");
    assertThat(print("pair", "-o", "-").err()).contains("a4 paper");
    assertThat(print("pair", "--paper", "letter", "-o", "-").err()).contains("letter paper");
  }

  @Test
  void everyPackOfAPadHasAJobOfItsOwn() {
    CommandRun run = print("pack", "--copies", "3", "-o", "-");
    assertThat(run.err()).startsWith("3 packs on letter paper (").contains("a job id for each");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          print                              | Missing required
          print pair                         | Missing required option: '--output=FILE'
          print poster -o -                  | 'poster' is none of pair, bench-card, pack, backing
          print pair --paper a3 -o -         | --paper: 'a3' is none of letter, a4
          print pair --units cubits -o -     | 'cubits' is none of in, metric
          print pack --dots one -o -         | --dots is for pair sheets only
          print pair --copies 0 -o -         | --copies must be 1 to 500, not 0
          print pair --copies many -o -      | 'many' is not an int
          print pair --colour red -o -       | There is no option '--colour'
          """)
  void misuseIsOneSentenceAndAHint(String words, String complaint) {
    CommandRun run = CommandRun.of(folder, words.split(" +"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(2);
    assertThat(run.err())
        .startsWith("sheaf: ")
        .contains(complaint)
        .contains("Try: sheaf print --help");
  }

  private CommandRun print(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "print";
    System.arraycopy(words, 0, all, 1, words.length);
    return CommandRun.of(folder, all);
  }
}
