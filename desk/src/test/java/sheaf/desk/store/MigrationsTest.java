package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The scripts that make the tables. */
class MigrationsTest {

  @Test
  void bothDatabasesHaveTheSameScripts() throws Exception {
    assertThat(scripts("sqlite")).isEqualTo(scripts("postgresql"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sqlite", "postgresql"})
  void lastScriptIsTheVersionThatTheProgramKnows(String database) throws Exception {
    assertThat(scripts(database))
        .hasSize(Migrations.VERSION)
        .last()
        .asString()
        .startsWith("V" + Migrations.VERSION + "__");
  }

  private static List<String> scripts(String folder) throws Exception {
    try (BufferedReader names =
        new BufferedReader(
            new InputStreamReader(
                Migrations.class.getResourceAsStream(folder), StandardCharsets.UTF_8))) {
      return names.lines().sorted().toList();
    }
  }
}
