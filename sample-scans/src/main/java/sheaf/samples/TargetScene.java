package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.UsualDraws;

/**
 * A target sheet that is being drawn: half are letter and half A4, half in inches; print scale,
 * paper and decoys are as on the pair sheets of {@link SceneMix}.
 */
final class TargetScene {

  /** Room kept between a hole's axis and the edge of the target, in millimetres. */
  private static final double EDGE = 6;

  /** Holes are at least this many diameters apart; nearer than 1.65 they touch. */
  private static final double APART = 1.3;

  private final SplittableRandom random;
  private final Layout layout;
  private final double shaft;
  private final PrintScale scale;
  private final List<Arrow> arrows = new ArrayList<>();

  TargetScene(SplittableRandom random, Variant variant) {
    this.random = random;
    this.layout =
        Layouts.current(
            variant, Paper.values()[random.nextInt(2)], UnitSystem.values()[random.nextInt(2)]);
    this.shaft = UsualDraws.shaft(random);
    this.scale = UsualDraws.printScale(random);
  }

  Layout layout() {
    return layout;
  }

  /** A place on the target that no other hole covers. */
  MmPoint free(Supplier<MmPoint> draw) {
    MmRect room = layout.target().orElseThrow().grow(-EDGE);
    while (true) {
      MmPoint axis = draw.get();
      boolean apart =
          arrows.stream().allMatch(o -> o.axis().distanceTo(axis) >= APART * shaft / scale.mean());
      if (apart && room.contains(axis)) {
        return axis;
      }
    }
  }

  void shoot(Arrow arrow) {
    arrows.add(arrow);
  }

  /** The sheet as shot, with something of the list behind it. */
  Scene ready(Map<String, String> ticks, List<Behind> behinds) {
    Behind behind = behinds.get(random.nextInt(behinds.size()));
    return new Scene(
        new SheetCode(JobId.random(random), random.nextInt(1, 100), layout.id()),
        behind,
        UsualDraws.behindTone(behind, random),
        PaperLook.draw(random),
        shaft,
        arrows,
        ticks,
        Decoys.draw(random),
        scale,
        random.nextLong());
  }
}
