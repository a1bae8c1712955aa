package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;

class ZonesShotTest {

  private static final Layout LAYOUT =
      Layouts.current(Variant.FOUR_ZONES, Paper.LETTER, UnitSystem.INCHES);

  private static FieldReading tick(String key, FieldReading.State state, String text) {
    return new FieldReading(key, state, text, OptionalDouble.empty(), Optional.empty(), 1);
  }

  @Test
  void aChangeThatIsTickedBeforeAShotTellsOfTheShot() {
    ZonesShot shot =
        ZonesShot.of(
            List.of(
                tick("changed_1", FieldReading.State.READ, "nothing"),
                tick("changed_2", FieldReading.State.CHECK, ""),
                tick("changed_3", FieldReading.State.BLANK, ""),
                tick("changed_way_4", FieldReading.State.READ, "left")),
            LAYOUT);
    assertThat(LAYOUT.zones()).extracting(shot::says).containsExactly(true, true, false, false);
  }
}
