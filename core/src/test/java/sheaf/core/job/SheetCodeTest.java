package sheaf.core.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

class SheetCodeTest {

  private static final LayoutId LAYOUT =
      new LayoutId(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES, 1);

  @Property(seed = "1")
  void everyCodeReadsBackAsItself(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 999) int number,
      @ForAll Variant variant,
      @ForAll Paper paper,
      @ForAll UnitSystem units,
      @ForAll @IntRange(min = 1, max = 99) int version) {
    SheetCode code =
        new SheetCode(
            JobId.random(new SplittableRandom(seed)),
            number,
            new LayoutId(variant, paper, units, version));

    assertThat(SheetCode.parse(code.text())).contains(code);
  }

  @Property(seed = "1")
  void oneWrongCharacterNeverNamesAnotherSheet(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 20) int place, @ForAll char wrong) {
    String text = new SheetCode(JobId.random(new SplittableRandom(seed)), 12, LAYOUT).text();
    int at = place % text.length();
    if (text.charAt(at) == wrong) {
      return;
    }

    String damaged = text.substring(0, at) + wrong + text.substring(at + 1);

    assertThat(SheetCode.parse(damaged)).isEmpty();
  }

  @Property(seed = "1")
  void theTextFitsAQrCodesCompactAlphanumericMode(@ForAll long seed) {
    // ISO/IEC 18004, 7.3.4: digits, capitals, space and $%*+-./:
    String text = new SheetCode(JobId.random(new SplittableRandom(seed)), 999, LAYOUT).text();

    assertThat(text).matches("[0-9A-Z $%*+\\-./:]+").hasSizeLessThanOrEqualTo(35);
  }

  @Test
  void theCheckCharacterIsThatOfIso7064() {
    // Worked example of the Global Release Identifier standard, which uses ISO/IEC 7064 MOD 37-36:
    // A1-2425G-ABC1234002-M (from memory; the check character is recomputed by the same standard).
    assertThat(CheckCharacter.of("A12425GABC1234002")).isEqualTo('M');
  }

  @Test
  void aForeignCodeIsNotOurs() {
    assertThat(SheetCode.parse("hello")).isEmpty();
    assertThat(SheetCode.parse("")).isEmpty();
  }

  @Test
  void aSheetsNumberHasARange() {
    JobId job = JobId.random(new SplittableRandom(1));

    assertThatThrownBy(() -> new SheetCode(job, 0, LAYOUT)).hasMessageContaining("1 to 999");
  }
}
