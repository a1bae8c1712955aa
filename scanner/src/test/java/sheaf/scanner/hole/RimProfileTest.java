package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RimProfileTest {

  private static final double DARK = 0.8;

  @Test
  void anOpeningEndsAtItsRadiusInEveryDirectionFromItsCentre() {
    try (DrawnSurface sheet = new DrawnSurface().disc(200, 200, 30, DARK)) {
      RimProfile rim = from(sheet, 200, 200);

      assertThat(near(rim, RimProfile.Sign.END, 31)).isGreaterThan(0.99f);
      assertThat(rim.share(RimProfile.Sign.OPEN, 20)).isEqualTo(1);
      assertThat(rim.share(RimProfile.Sign.OPEN, 40)).isZero();
      assertThat(rim.share(RimProfile.Sign.PAPER, 40)).isEqualTo(1);
    }
  }

  @Test
  void fromAnyOtherCentreItsEndsAreSpreadOut() {
    try (DrawnSurface sheet = new DrawnSurface().disc(200, 200, 30, DARK)) {
      assertThat(near(from(sheet, 206, 200), RimProfile.Sign.END, 31)).isLessThan(0.3f);
    }
  }

  @Test
  void aFaintFoldShowsAsAnEdgeWhereNothingIsOpen() {
    try (DrawnSurface sheet = new DrawnSurface().disc(200, 200, 30, 0.05)) {
      RimProfile rim = RimProfile.around(closeup(sheet, Seeds.Kind.FAINT), 200, 200);

      assertThat(near(rim, RimProfile.Sign.FAINT_EDGE, 30)).isGreaterThan(2);
      assertThat(rim.share(RimProfile.Sign.FAINT_SHADE, 20)).isEqualTo(1);
      assertThat(rim.share(RimProfile.Sign.DARK, 20)).isCloseTo(0.25f, within(0.01f));
      assertThat(rim.share(RimProfile.Sign.FAINT_SHADE, 50)).isZero();
    }
  }

  @Test
  void whereALetterHidesPaperAnOpeningStillCounts() {
    try (DrawnSurface sheet = new DrawnSurface().disc(200, 200, 30, DARK).hide(200, 150, 60, 100)) {
      RimProfile rim = from(sheet, 200, 200);

      assertThat(rim.share(RimProfile.Sign.OPEN, 20)).isEqualTo(1);
      assertThat(rim.share(RimProfile.Sign.PAPER, 40)).isBetween(0.4f, 0.6f);
    }
  }

  @Test
  void whereSolidPrintCoversItNoOpeningCounts() {
    try (DrawnSurface sheet =
        new DrawnSurface().disc(200, 200, 30, DARK).cover(200, 150, 60, 100)) {
      RimProfile rim = from(sheet, 200, 200);

      assertThat(rim.share(RimProfile.Sign.OPEN, 20)).isBetween(0.4f, 0.6f);
      assertThat(near(rim, RimProfile.Sign.END, 31)).isBetween(0.4f, 0.6f);
    }
  }

  private static RimProfile from(DrawnSurface sheet, int x, int y) {
    return RimProfile.around(closeup(sheet, Seeds.Kind.DARK), x, y);
  }

  private static Closeup closeup(DrawnSurface sheet, Seeds.Kind kind) {
    return Closeup.of(sheet.surface(), kind, 200, 200, 120);
  }

  /** The share within two pixels of a distance, for drawn circles are made of pixels. */
  private static float near(RimProfile rim, RimProfile.Sign sign, int distance) {
    float sum = 0;
    for (int i = distance - 2; i <= distance + 2; i++) {
      sum += rim.share(sign, i);
    }
    return sum;
  }
}
