package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.FloatRange;
import org.junit.jupiter.api.Test;

/** Colours are blue, green and red as shares of the paper's. */
class BehindColourTest {

  private static final double[] WOOD = {0.33, 0.53, 0.7};
  private static final double[] SKY = {1.06, 0.97, 0.92};
  private static final double[] MAGENTA = {0.53, 0.01, 0.93};

  private static float share(double[] behind, double blue, double green, double red) {
    BehindColour colour = BehindColour.seen(behind);
    return colour.share(colour.amount((float) blue, (float) green, (float) red));
  }

  @Test
  void theColourItselfShowsWhatLiesBehind() {
    assertThat(share(WOOD, 0.33, 0.53, 0.7)).isEqualTo(1);
    assertThat(share(SKY, 1.06, 0.97, 0.92)).isEqualTo(1);
    assertThat(share(MAGENTA, 0.53, 0.01, 0.93)).isEqualTo(1);
  }

  @Test
  void woodInTheShadowOfAHoleIsStillWood() {
    assertThat(share(WOOD, 0.75 * 0.33, 0.75 * 0.53, 0.75 * 0.7)).isEqualTo(1);
  }

  @Test
  void aRedPenIsNeitherWoodNorBacking() {
    assertThat(share(WOOD, 0.25, 0.2, 0.7)).isLessThan(0.5f);
    assertThat(share(MAGENTA, 0.25, 0.2, 0.75)).isZero();
  }

  @Test
  void aBluePenIsTooDarkForSky() {
    assertThat(share(SKY, 0.5, 0.25, 0.2)).isZero();
  }

  @Test
  void magentaIsTheBackingWhateverItsShade() {
    assertThat(BehindColour.seen(MAGENTA)).isSameAs(BehindColour.BACKING);
    assertThat(BehindColour.seen(new double[] {0.6, 0.1, 0.95})).isSameAs(BehindColour.BACKING);
    assertThat(BehindColour.seen(WOOD)).isNotSameAs(BehindColour.BACKING);
  }

  @Test
  void onlyAFaintColourNeedsSmoothing() {
    assertThat(BehindColour.seen(SKY).isWeak()).isTrue();
    assertThat(BehindColour.seen(WOOD).isWeak()).isFalse();
  }

  @Property
  void whatHasNoColourShowsNothing(@ForAll @FloatRange(min = 0, max = 1.2f) float tone) {
    assertThat(share(WOOD, tone, tone, tone)).isZero();
    assertThat(share(SKY, tone, tone, tone)).isZero();
    assertThat(share(MAGENTA, tone, tone, tone)).isZero();
  }
}
