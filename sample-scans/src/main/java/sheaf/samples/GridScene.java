package sheaf.samples;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Sheets with a dot on a grid: three to six arrows that spread by 5 to 18 mm, on one sheet in four
 * with broadheads. Distance and arrows are ticked on five in six sheets, the head on two in three.
 */
final class GridScene {

  private GridScene() {}

  /**
   * The next sheet.
   *
   * @param farthestOff from the spot to the middle of the arrows' scatter at most, in millimetres
   */
  static Scene draw(
      SplittableRandom random, Variant variant, double farthestOff, List<Behind> behinds) {
    TargetScene scene = new TargetScene(random, variant);
    Layout layout = scene.layout();
    boolean broadheads = random.nextInt(4) == 0;
    int blades = broadheads ? random.nextInt(2, 5) : 0;
    double cut = broadheads ? random.nextDouble(25, 38) : 0;
    AimDot dot = layout.dots().get(0);
    double angle = random.nextDouble(2 * Math.PI);
    double off = random.nextDouble(0, farthestOff);
    double spread = random.nextDouble(5, 18);
    int arrows = random.nextInt(3, 7);
    for (int i = 0; i < arrows; i++) {
      MmPoint axis =
          scene.free(
              () ->
                  new MmPoint(
                      dot.centre().x() + off * Math.cos(angle) + spread * random.nextGaussian(),
                      dot.centre().y() + off * Math.sin(angle) + spread * random.nextGaussian()));
      Head head = broadheads ? Head.BROADHEAD : Head.FIELD;
      scene.shoot(new Arrow(axis, head, blades, cut, dot.aim()));
    }
    return scene.ready(ticks(random, layout, arrows, broadheads), behinds);
  }

  private static Map<String, String> ticks(
      SplittableRandom random, Layout layout, int arrows, boolean broadheads) {
    Map<String, String> ticks = new HashMap<>();
    if (random.nextInt(6) > 0) {
      List<Field.Option> distances = ((Field.Choice) layout.field("distance")).options();
      ticks.put("distance", distances.get(random.nextInt(distances.size())).value());
      ticks.put("arrows_shot", String.valueOf(arrows));
    }
    if (random.nextInt(3) < 2) {
      ticks.put("head", broadheads ? "broadheads" : "field points");
    }
    return ticks;
  }
}
