package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.samples.CommittedSamples;
import sheaf.samples.CommittedSamples.CommittedSample;
import sheaf.scanner.SheetReader;

/** What the guide for users says is what happens. */
class ReadmeTest {

  private static final Path README = Path.of("../README.md");

  /** A decimal, or a length in sixteenths such as {@code 1 3/8}. */
  private static final String FIGURE = "\\d+\\.\\d+|(\\d+ )?\\d+/\\d+";

  private static final String READ = "$ sheaf read scans/*\n";

  @TempDir Path folder;

  /** When the reader has become better, the block in the guide is to be replaced by its output. */
  @Test
  @Tag("slow")
  void shownReadingIsWhatTheSamplesOfTheJobRead() throws Exception {
    List<String> words = new ArrayList<>(List.of("read"));
    for (CommittedSample sample : CommittedSamples.all()) {
      if (sample.name().startsWith("job-")) {
        words.add(Files.write(folder.resolve(sample.name()), sample.file()).toString());
      }
    }
    CommandRun run =
        CommandRun.of(
            folder.resolve("home"), new SheetReader()::read, words.toArray(String[]::new));
    String guide = Files.readString(README);
    String shown = guide.substring(guide.indexOf(READ) + READ.length());
    assertSame(shown.substring(0, shown.indexOf("```")), run.out());
  }

  /** The same words; figures that are no more apart than one reader may be from the next. */
  private static void assertSame(String shown, String real) {
    assertThat(shown.replaceAll(FIGURE, "#")).isEqualTo(real.replaceAll(FIGURE, "#"));
    List<Double> figures = figures(real);
    List<Double> stated = figures(shown);
    for (int i = 0; i < figures.size(); i++) {
      assertThat(stated.get(i)).as(shown + real).isCloseTo(figures.get(i), within(0.5));
    }
  }

  private static List<Double> figures(String text) {
    return Pattern.compile("\\d+\\.\\d+")
        .matcher(text)
        .results()
        .map(figure -> Double.valueOf(figure.group()))
        .toList();
  }

  @Test
  void everyCommandOfTheTableIsACommand() throws Exception {
    List<String> told = words("^\\| `sheaf ([a-z]+)", Files.readString(README));
    List<String> known = words("^  ([a-z]+)  +[A-Z]", CommandRun.of(folder, "--help").out());
    assertThat(known).contains("read", "help");
    assertThat(told)
        .containsExactlyInAnyOrderElementsOf(
            known.stream().filter(command -> !command.equals("help")).toList());
  }

  private static List<String> words(String pattern, String text) {
    return Pattern.compile(pattern, Pattern.MULTILINE)
        .matcher(text)
        .results()
        .map((MatchResult row) -> row.group(1))
        .toList();
  }
}
