package sheaf.samples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.UsualDraws;

/**
 * Pair sheets with six holes each, in mixed settings.
 *
 * <p>Two in three sheets have two dots; half are letter and half A4; a third were printed off size,
 * by -6 % to +3 % and up to 0.4 % unequally; groups spread by 5 to 20 mm, broadheads land up to 40
 * mm off; a quarter have two holes that touch; a third bear notes, a third pen dots, some staples,
 * rings around holes, or a crease.
 */
final class SceneMix {

  private static final int ARROWS = 3;

  /** Room kept between a hole's axis and the edge of the target, in millimetres. */
  private static final double EDGE = 6;

  private final SplittableRandom random;

  SceneMix(SplittableRandom random) {
    this.random = random;
  }

  /** The next sheet, one or two holes of which overlap another: 0.5 to 1.5 diameters apart. */
  Scene overlapping(List<Behind> behinds) {
    return scene(behinds, random.nextInt(1, 3), 0.5, 1.5);
  }

  /** The next sheet, with something of the list behind it, each as likely as another. */
  Scene scene(List<Behind> behinds) {
    return scene(behinds, random.nextInt(4) == 0 ? 1 : 0, 1.0, 1.6);
  }

  /**
   * A sheet.
   *
   * @param touching how many of its holes stand beside an earlier one
   * @param least how near, in diameters
   * @param most how far, in diameters
   */
  private Scene scene(List<Behind> behinds, int touching, double least, double most) {
    Layout layout =
        Layouts.current(
            random.nextInt(3) < 2 ? Variant.TWO_DOTS : Variant.SHARED_DOT,
            Paper.values()[random.nextInt(2)],
            UnitSystem.values()[random.nextInt(2)]);
    SheetCode code = new SheetCode(JobId.random(random), random.nextInt(1, 100), layout.id());
    double shaft = UsualDraws.shaft(random);
    PrintScale scale = UsualDraws.printScale(random);
    Behind behind = behinds.get(random.nextInt(behinds.size()));
    return new Scene(
        code,
        behind,
        UsualDraws.behindTone(behind, random),
        PaperLook.draw(random),
        shaft,
        arrows(layout, shaft / scale.mean(), new Touching(touching, least, most)),
        ticks(layout),
        Decoys.draw(random),
        scale,
        random.nextLong());
  }

  /** How many of the last holes stand beside an earlier one, and how near, in diameters. */
  private record Touching(int holes, double least, double most) {}

  private List<Arrow> arrows(Layout layout, double shaft, Touching touching) {
    int blades = random.nextInt(2, 5);
    double cut = blades == 2 ? random.nextDouble(25, 55) : random.nextDouble(22, 38);
    double spread = random.nextDouble(5, 20);
    double angle = random.nextDouble(2 * Math.PI);
    double offset = random.nextDouble(0, 40);
    List<Arrow> arrows = new ArrayList<>();
    for (int i = 0; i < 2 * ARROWS; i++) {
      boolean field = i % 2 == 0;
      Head head = field ? Head.FIELD : Head.BROADHEAD;
      AimDot dot = dot(layout, head);
      double dx = field ? 0 : offset * Math.cos(angle);
      double dy = field ? 0 : offset * Math.sin(angle);
      boolean beside = i >= 2 * ARROWS - touching.holes;
      MmPoint axis =
          place(
              layout,
              dot,
              dx,
              dy,
              spread,
              shaft,
              arrows,
              beside ? Optional.of(touching) : Optional.empty());
      arrows.add(new Arrow(axis, head, field ? 0 : blades, field ? 0 : cut, dot.aim()));
    }
    return arrows;
  }

  private static AimDot dot(Layout layout, Head head) {
    Aim wanted = head == Head.FIELD ? Aim.FIELD : Aim.BROADHEAD;
    return layout.dots().stream()
        .filter(dot -> dot.aim() == wanted || dot.aim() == Aim.SHARED)
        .findFirst()
        .orElseThrow();
  }

  /** A place on the target that no other hole covers; the touching one stands beside another. */
  private MmPoint place(
      Layout layout,
      AimDot dot,
      double dx,
      double dy,
      double spread,
      double shaft,
      List<Arrow> others,
      Optional<Touching> touching) {
    MmRect room = layout.target().orElseThrow().grow(-EDGE);
    while (true) {
      MmPoint axis =
          new MmPoint(
              dot.centre().x() + dx + random.nextGaussian() * spread,
              dot.centre().y() + dy + random.nextGaussian() * spread);
      if (touching.isPresent()) {
        Arrow other = others.get(random.nextInt(others.size()));
        axis = beside(other, dot, shaft, touching.get()).orElse(axis);
      }
      MmPoint candidate = axis;
      double nearest =
          others.stream().mapToDouble(o -> o.axis().distanceTo(candidate)).min().orElse(1e9);
      double least = touching.map(Touching::least).orElse(1.7);
      if (room.contains(axis) && nearest >= least * shaft && isNearest(layout, dot, axis)) {
        return axis;
      }
      spread *= 1.02;
    }
  }

  private Optional<MmPoint> beside(Arrow other, AimDot dot, double shaft, Touching touching) {
    if (other.aim() != dot.aim()) {
      return Optional.empty();
    }
    double angle = random.nextDouble(2 * Math.PI);
    double apart = shaft * random.nextDouble(touching.least, touching.most);
    return Optional.of(
        new MmPoint(
            other.axis().x() + apart * Math.cos(angle),
            other.axis().y() + apart * Math.sin(angle)));
  }

  /** A shot that lands nearer to the other dot cannot be told from one aimed there. */
  private static boolean isNearest(Layout layout, AimDot dot, MmPoint axis) {
    return layout.dots().stream()
        .allMatch(
            other ->
                dot.centre().distanceTo(axis) * 1.2 <= other.centre().distanceTo(axis)
                    || other == dot);
  }

  private Map<String, String> ticks(Layout layout) {
    Map<String, String> ticks = new HashMap<>();
    Field.Choice distance = (Field.Choice) layout.field("distance");
    ticks.put(
        "distance", distance.options().get(random.nextInt(distance.options().size())).value());
    ticks.put("arrows_field", String.valueOf(ARROWS));
    ticks.put("arrows_broadhead", String.valueOf(ARROWS));
    if (random.nextBoolean()) {
      ticks.put("changed", random.nextBoolean() ? "rest" : "nothing");
    }
    return ticks;
  }
}
