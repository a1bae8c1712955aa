package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

class SceneMixTest {

  private static final List<Scene> SCENES = new ArrayList<>();

  @BeforeAll
  static void draw() {
    for (long seed = 1; seed <= 400; seed++) {
      SCENES.add(new SceneMix(new SplittableRandom(seed)).scene(List.of(Behind.BLACK)));
    }
  }

  private static double share(Predicate<Scene> predicate) {
    return SCENES.stream().filter(predicate).count() / (double) SCENES.size();
  }

  @Test
  void twoThirdsHaveTwoDotsHalfAreLetterAndAThirdAreOffSize() {
    assertThat(share(s -> s.code().layout().variant() == Variant.TWO_DOTS)).isBetween(0.6, 0.73);
    assertThat(share(s -> s.code().layout().paper() == Paper.LETTER)).isBetween(0.43, 0.57);
    assertThat(share(s -> s.scale().x() != 1)).isBetween(0.27, 0.4);
  }

  @Test
  void everySheetIsShotWithThreeOfEachHeadInsideItsTarget() {
    for (Scene scene : SCENES) {
      MmRect target = Layouts.find(scene.code().layout()).orElseThrow().target().orElseThrow();
      assertThat(scene.arrows()).hasSize(6).allMatch(arrow -> target.contains(arrow.axis()));
      assertThat(scene.arrows()).filteredOn(arrow -> arrow.head() == Head.FIELD).hasSize(3);
      assertThat(scene.ticks()).containsEntry("arrows_field", "3");
      assertThat(scene.ticks()).containsEntry("arrows_broadhead", "3");
    }
  }

  @Test
  void someHolesTouchButNoneCoverEachOther() {
    assertThat(SCENES).allMatch(scene -> nearest(scene) >= 1);
    assertThat(share(scene -> nearest(scene) < 1.6)).isBetween(0.12, 0.3);
  }

  /** The least distance between two holes, in diameters of the shaft. */
  private static double nearest(Scene scene) {
    double nearest = Double.MAX_VALUE;
    List<Arrow> arrows = scene.arrows();
    for (int i = 0; i < arrows.size(); i++) {
      for (int j = 0; j < i; j++) {
        double apart = arrows.get(i).axis().distanceTo(arrows.get(j).axis());
        nearest = Math.min(nearest, apart * scene.scale().mean() / scene.shaft());
      }
    }
    return nearest;
  }
}
