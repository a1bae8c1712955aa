package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;

class BandsTest {

  private static final Layout LINE =
      Layouts.current(Variant.SET_DISTANCES, Paper.LETTER, UnitSystem.INCHES);
  private static final Zone SECOND = LINE.zones().get(1);

  /** So far above the border of the second band and the third. */
  private static MmPoint above(double mm) {
    return new MmPoint(SECOND.rect().centre().x() + 40, SECOND.rect().bottom() - mm);
  }

  private static Bands ticked(String key, int arrows) {
    FieldReading field =
        new FieldReading(
            key,
            State.READ,
            String.valueOf(arrows),
            OptionalDouble.of(arrows),
            Optional.empty(),
            1);
    return new Bands(LINE, ArrowsShot.of(List.of(field), LINE));
  }

  @Test
  void aHoleAtABorderMayBeTheNextBands() {
    Bands bands = new Bands(LINE, ArrowsShot.of(List.of(), LINE));
    bands.found(SECOND, 2);

    assertThat(bands.isUnsure(above(1))).isTrue();
    assertThat(bands.isUnsure(above(-1))).isTrue();
    assertThat(bands.isUnsure(above(6))).isFalse();
    assertThat(bands.isUnsure(SECOND.rect().centre())).isFalse();
  }

  @Test
  void aBandWithAllItsArrowsKeepsThem() {
    Bands bands = ticked("arrows_2", 2);
    bands.found(SECOND, 2);

    assertThat(bands.isUnsure(above(1))).isFalse();
    assertThat(bands.isUnsure(above(-1))).isTrue();
  }

  @Test
  void aBandThatLacksAnArrowDoesNotSettleIt() {
    Bands bands = ticked("arrows_2", 3);
    bands.found(SECOND, 2);

    assertThat(bands.isUnsure(above(1))).isTrue();
  }

  @Test
  void aSheetWithoutBandsHasNoBorders() {
    Layout group = Layouts.current(Variant.GROUP_GRID, Paper.LETTER, UnitSystem.INCHES);
    Bands bands = new Bands(group, ArrowsShot.of(List.of(), group));

    assertThat(bands.isUnsure(group.page().centre())).isFalse();
  }
}
