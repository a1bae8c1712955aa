package sheaf.samples.tear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.TearShot;

class TearSceneMixTest {

  private static final List<TearScene> SCENES = new ArrayList<>();
  private static final List<TearShot> TEARS = new ArrayList<>();

  @BeforeAll
  static void draw() {
    for (long seed = 1; seed <= 400; seed++) {
      TearScene scene = new TearSceneMix(new SplittableRandom(seed)).scene(List.of(Behind.BLACK));
      SCENES.add(scene);
      TEARS.addAll(scene.tears());
    }
  }

  private static double share(Predicate<TearShot> predicate) {
    return TEARS.stream().filter(predicate).count() / (double) TEARS.size();
  }

  private static double length(TearShot tear) {
    return tear.point().distanceTo(tear.tail());
  }

  @Test
  void bulletHolesSmallTearsAndLongOnesAllOccur() {
    assertThat(share(tear -> length(tear) == 0)).isBetween(0.1, 0.18);
    assertThat(share(tear -> length(tear) > 0 && length(tear) < 6)).isBetween(0.15, 0.25);
    assertThat(share(tear -> length(tear) > 30)).isBetween(0.14, 0.26);
    assertThat(TEARS).allMatch(tear -> length(tear) < 64);
  }

  @Test
  void everyTearLiesInItsZone() {
    for (TearScene scene : SCENES) {
      Layout layout = Layouts.find(scene.sheet().code().layout()).orElseThrow();
      assertThat(scene.tears())
          .allMatch(
              tear ->
                  layout.zones().get(tear.zone() - 1).rect().contains(tear.point())
                      && layout.zones().get(tear.zone() - 1).rect().contains(tear.tail()));
    }
  }

  @Test
  void tearsLeadInAllDirections() {
    assertThat(share(tear -> tear.tail().x() > tear.point().x())).isBetween(0.36, 0.5);
    assertThat(share(tear -> tear.tail().y() > tear.point().y())).isBetween(0.36, 0.5);
  }

  @Test
  void someZonesAreLeftEmptyAndSomeAreHitTwice() {
    long twice =
        SCENES.stream()
            .map(TearScene::tears)
            .filter(t -> t.stream().map(TearShot::zone).distinct().count() < t.size())
            .count();
    assertThat(twice).isBetween(8L, 35L);
    assertThat(SCENES).anyMatch(scene -> scene.tears().size() == 1);
    assertThat(SCENES).anyMatch(scene -> scene.tears().size() >= 4);
  }
}
