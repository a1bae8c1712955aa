package sheaf.samples.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;

class TruthFileTest {

  private static Truth truth(List<Shot> shots, Optional<MmVector> offset) {
    return new Truth(
        "7G4KQ2M8XE0.4.P2LI1.C",
        "backing",
        240,
        true,
        0.9731,
        0.97,
        false,
        6.213456789,
        Map.of("distance", "20", "arrows_field", "3"),
        shots,
        offset,
        "check");
  }

  @Test
  void aTruthComesBackFromItsFileToTheLastDigit() {
    Shot field =
        new Shot(new MmPoint(61.25, 1.0 / 3), Head.FIELD, 0, 0, Aim.SHARED, new MmPoint(61.3, 0.2));
    Shot broadhead =
        new Shot(new MmPoint(80, 90.7), Head.BROADHEAD, 3, 31.5, Aim.SHARED, new MmPoint(80.1, 91));
    Truth truth = truth(List.of(field, broadhead), Optional.of(new MmVector(-4.5, Math.PI)));
    assertThat(TruthFile.read(TruthFile.write(truth))).isEqualTo(truth);
  }

  @Test
  void aSheetWithoutHolesHasNoOffset() {
    Truth truth = truth(List.of(), Optional.empty());
    assertThat(TruthFile.read(TruthFile.write(truth))).isEqualTo(truth);
    assertThat(TruthFile.write(truth)).doesNotContain("offset");
  }

  @Test
  void whatIsNoTruthIsRefused() {
    assertThatThrownBy(() -> TruthFile.read("{\"dpi\": 3}"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> TruthFile.read("not JSON"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
