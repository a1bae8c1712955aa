package sheaf.core.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Paper printed from a released layout lies in drawers for years, so a released layout never
 * changes. {@code mvn -pl core test -Dlayouts.freeze=true} writes the copy of a layout that has
 * none yet; it never overwrites one.
 */
class FrozenLayoutsTest {

  private static final Path FROZEN = Path.of("src/test/resources/layouts");

  static Stream<Layout> released() {
    return Layouts.all().stream();
  }

  @ParameterizedTest
  @MethodSource("released")
  void aReleasedLayoutIsExactlyItsFrozenCopy(Layout layout) throws IOException {
    Path copy = FROZEN.resolve(layout.id().code() + ".txt");
    if (Boolean.getBoolean("layouts.freeze") && Files.notExists(copy)) {
      Files.writeString(copy, LayoutText.of(layout));
    }

    assertThat(copy).as("frozen copy of " + layout.id().code()).exists();
    assertThat(LayoutText.of(layout)).isEqualTo(Files.readString(copy));
  }

  @Test
  void everyFrozenLayoutCanStillBeFound() throws IOException {
    try (Stream<Path> copies = Files.list(FROZEN)) {
      List<String> codes =
          copies.map(copy -> copy.getFileName().toString().replace(".txt", "")).toList();

      assertThat(codes)
          .isNotEmpty()
          .allSatisfy(code -> assertThat(LayoutId.parse(code).flatMap(Layouts::find)).isPresent());
    }
  }
}
