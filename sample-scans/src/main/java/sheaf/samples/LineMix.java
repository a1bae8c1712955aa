package sheaf.samples;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Variant;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Flatbed scans of line sheets in mixed settings: a seed gives a scan.
 *
 * <p>Two in three have their distances printed, on the others the boxes are left blank. The first
 * three bands or more are shot at with one to three arrows each, which drift by up to 1.5 mm for
 * each unit of distance and are off by up to 15 mm; they scatter more from farther away, and
 * sometimes one lands in the next band. On one sheet in six no arrows are ticked. Else as {@link
 * FlatbedMix}.
 */
public final class LineMix {

  /** Distances of the bands on small paper; written in where none are printed. */
  private static final double[] USUAL = {3, 5, 10, 15, 20};

  private LineMix() {}

  /** Makes the scan of a seed. */
  public static Sample make(long seed) {
    return FlatbedMix.make(seed, LineMix::scene);
  }

  private static Scene scene(SplittableRandom random, List<Behind> behinds) {
    Variant variant = random.nextInt(3) < 2 ? Variant.SET_DISTANCES : Variant.OPEN_DISTANCES;
    TargetScene scene = new TargetScene(random, variant);
    Layout layout = scene.layout();
    double drift = random.nextDouble(-1.5, 1.5);
    double offset = random.nextDouble(-15, 15);
    double scatter = random.nextDouble(0.2, 0.8);
    double height = random.nextDouble(3, 7);
    boolean ticked = random.nextInt(6) > 0;
    int shotAt = random.nextInt(3, layout.zones().size() + 1);
    Map<String, String> ticks = new HashMap<>();
    for (Zone band : layout.zones().subList(0, shotAt)) {
      int arrows = random.nextInt(1, 4);
      double distance = USUAL[band.number() - 1];
      double middle = offset + drift * distance;
      double wide = scatter * Math.hypot(5, distance);
      MmPoint spot = layout.dots().get(band.number() - 1).centre();
      for (int i = 0; i < arrows; i++) {
        MmPoint axis =
            scene.free(
                () ->
                    new MmPoint(
                        spot.x() + middle + wide * random.nextGaussian(),
                        spot.y() + height * random.nextGaussian()));
        OptionalInt zone = OptionalInt.of(band.number());
        Arrow arrow =
            new Arrow(axis, Head.FIELD, 0, 0, layout.dots().get(band.number() - 1).aim(), zone);
        scene.shoot(arrow);
      }
      if (ticked) {
        ticks.put("arrows_" + band.number(), String.valueOf(arrows));
      }
    }
    return scene.ready(ticks, behinds);
  }
}
