package sheaf.scanner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.hole.ArrowsShot;

class ArrowCountTest {

  private final List<FieldReading> fields = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();

  private void ticked(String key, int arrows) {
    fields.add(
        new FieldReading(
            key,
            State.READ,
            String.valueOf(arrows),
            OptionalDouble.of(arrows),
            Optional.empty(),
            1));
  }

  private void hole(Head head, Aim aim, int zone) {
    OptionalInt number = zone == 0 ? OptionalInt.empty() : OptionalInt.of(zone);
    holes.add(new Hole(new MmPoint(90, 90), 0.3, 6, head, 0, 0, aim, number, 1));
  }

  private List<Reason> differences(Variant variant) {
    Layout layout = Layouts.current(variant, Paper.LETTER, UnitSystem.INCHES);
    return ArrowCount.against(holes, ArrowsShot.of(fields, layout));
  }

  @Test
  void aPairSheetCountsEachHead() {
    ticked("arrows_field", 1);
    ticked("arrows_broadhead", 2);
    hole(Head.FIELD, Aim.FIELD, 0);
    hole(Head.BROADHEAD, Aim.BROADHEAD, 0);

    assertThat(differences(Variant.TWO_DOTS))
        .extracting(Reason::message)
        .containsExactly(
            "2 broadheads are ticked as shot, but 1 such hole is found: count the holes on the sheet, and look at the ticks.");
  }

  @Test
  void aGroupSheetCountsAllHolesWhateverTheirHeads() {
    ticked("arrows_shot", 3);
    hole(Head.FIELD, Aim.SHARED, 0);
    hole(Head.UNKNOWN, Aim.SHARED, 0);
    assertThat(differences(Variant.GROUP_GRID))
        .extracting(Reason::code)
        .containsExactly(ReasonCode.ARROWS_AGAINST_HOLES);

    hole(Head.BROADHEAD, Aim.SHARED, 0);
    assertThat(differences(Variant.GROUP_GRID)).isEmpty();
  }

  @Test
  void aLineSheetCountsBandByBand() {
    ticked("arrows_1", 1);
    ticked("arrows_2", 1);
    hole(Head.FIELD, Aim.FIELD, 2);
    hole(Head.FIELD, Aim.FIELD, 2);

    assertThat(differences(Variant.SET_DISTANCES))
        .extracting(Reason::message)
        .containsExactly(
            "1 arrow is ticked as shot at band 1, but 0 such holes are found: count the holes on the sheet, and look at the ticks.",
            "1 arrow is ticked as shot at band 2, but 2 such holes are found: count the holes on the sheet, and look at the ticks.");
  }

  @Test
  void aCountLeftBlankChecksNothing() {
    hole(Head.FIELD, Aim.FIELD, 2);
    assertThat(differences(Variant.SET_DISTANCES)).isEmpty();
    assertThat(differences(Variant.GROUP_GRID)).isEmpty();
  }
}
