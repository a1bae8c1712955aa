package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditDistanceTest {

  /**
   * The textbook examples: kitten and sitting; Saturday and Sunday; intention and execution
   * (Jurafsky and Martin, Speech and Language Processing, chapter 2). Values from memory, and by
   * hand.
   */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "Saturday, Sunday, 3",
    "intention, execution, 5",
    "paper, paper, 0",
    "'', units, 5"
  })
  void agreesWithTextbooks(String a, String b, int distance) {
    assertThat(EditDistance.between(a, b)).isEqualTo(distance);
  }

  @Property
  void isADistance(
      @ForAll @AlphaChars @StringLength(max = 12) String a,
      @ForAll @AlphaChars @StringLength(max = 12) String b,
      @ForAll @AlphaChars @StringLength(max = 12) String c) {
    int ab = EditDistance.between(a, b);
    assertThat(ab).isEqualTo(EditDistance.between(b, a));
    assertThat(ab == 0).isEqualTo(a.equals(b));
    assertThat(ab).isLessThanOrEqualTo(EditDistance.between(a, c) + EditDistance.between(c, b));
  }
}
