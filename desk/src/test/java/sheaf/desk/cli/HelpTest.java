package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"print", "read", "show", "plan", "card", "profile", "demo", "completion"})
  void everyCommandTeachesByExample(String command) {
    CommandRun run = CommandRun.of(folder, command, "--help");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Examples:").contains("--home=DIR").contains("sheaf " + command);
    // A line of prose that was broken would leave a short rest: every one stands as it was written.
    assertThat(run.out().lines().dropWhile(line -> !line.equals("Examples:")))
        .noneMatch(line -> line.matches("[a-z]+( [a-z]+)?"));
    assertThat(CommandRun.of(folder, "help", command).out()).isEqualTo(run.out());
  }

  @Test
  void versionIsTheOneThatWasBuilt() {
    CommandRun run = CommandRun.of(folder, "--version");
    assertThat(run.status()).isZero();
    assertThat(run.out()).matches("sheaf \\d+\\.\\d+\\.\\d+\\n");
  }

  @Test
  void withoutACommandTheCommandsAreNamed() {
    CommandRun run = CommandRun.of(folder);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .contains("print, read, watch, confirm, set, show")
        .contains("Try: sheaf --help");
  }

  @Test
  void homeMayStandBeforeOrBehindTheCommand() {
    Path home = folder.resolve("other");
    for (String[] words :
        new String[][] {
          {"--home", home.toString(), "show", "00000-00001-1"},
          {"show", "00000-00001-1", "--home", home.toString()}
        }) {
      assertThat(CommandRun.of(folder, words).err()).contains("is not known");
    }
  }

  @Test
  void completionIsAScriptThatKnowsTheWords() {
    CommandRun run = CommandRun.of(folder, "completion");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("complete -F", "bench-card", "letter", "--proof");
  }
}
