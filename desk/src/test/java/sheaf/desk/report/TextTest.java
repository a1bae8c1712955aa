package sheaf.desk.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;

class TextTest {

  @Property
  void wrappingLosesNoWord(
      @ForAll @NotEmpty List<@AlphaChars @NotEmpty String> words,
      @ForAll @IntRange(min = 20, max = 120) int width) {
    String text = String.join(" ", words);
    assertThat(String.join(" ", Text.wrap(text, width))).isEqualTo(text);
  }

  @Test
  void wrappedLinesFit() {
    assertThat(Text.wrap("one two three four five six seven eight nine", 20))
        .containsExactly("one two three four", "five six seven eight", "nine");
  }

  @Test
  void linesHangBelowTheirLead() {
    assertThat(Text.hanging("  - ", "one two three four five", 24))
        .isEqualTo("  - one two three four\n    five\n");
  }

  @Test
  void longNamesLoseTheirMiddle() {
    assertThat(Text.elide("IMG_20260914_183512.jpg", 16)).isEqualTo("IMG_202..512.jpg");
    assertThat(Text.elide("a.jpg", 16)).isEqualTo("a.jpg");
  }
}
