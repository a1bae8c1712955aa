package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is in the file, a person is told in whole sentences, and no good line is lost. */
class ProfilePropertiesTest {

  /** What lines of a profile, right and wrong, are made of. */
  private static final List<String> PIECES =
      List.of(
          "paper",
          "shop",
          "name",
          "yd",
          "speed",
          " = ",
          "=",
          ".",
          "[",
          "]",
          "[shop]",
          "[x]",
          "[[shop]]",
          "\"",
          "'",
          "\"a4\"",
          "\"1 mm\"",
          "[10, 20]",
          "10,",
          "5",
          "{",
          "}",
          "#",
          "\\",
          "\\q",
          "\n",
          "\n",
          "\r\n",
          " ",
          "ä",
          "\"\"\"",
          "true",
          "1979-05-27");

  @Property(tries = 300)
  void everyTextIsReadOrComplainedOf(@ForAll("texts") String text) {
    ProfileReader reader = new ProfileReader(TomlText.of(text), Path.of("."));
    assertThat(reader.profile()).isNotNull();
    assertThat(reader.problems())
        .allSatisfy(
            problem -> {
              assertThat(problem.line()).isBetween(1, (int) text.lines().count() + 1);
              assertThat(problem.sentence()).matches("(?s).+[.?]");
            });
  }

  @Example
  void aWrongEscapeInAKeyIsAProblemToo() {
    assertThat(TomlText.of("paper = \"a4\"\n[\"paper\\q").problems())
        .extracting(Problem::line)
        .containsExactly(2);
  }

  @Property(tries = 100)
  void brokenLineHidesNoOther(@ForAll("pieces") String broken) {
    String text = "paper = \"leter\"\n" + broken + "\n[tolerances]\nspeed = \"3 mm\"\n";
    ProfileReader reader = new ProfileReader(TomlText.of(text), Path.of("."));
    reader.profile();
    assertThat(reader.problems()).extracting(Problem::line).contains(1, 4);
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.of(PIECES).list().ofMaxSize(25).map(pieces -> String.join("", pieces));
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(
        "just words", "shop.nmae = 5", "units = in", "units = \"in", "shop = [1,");
  }
}
