package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The pair sheet, version 1: field points and broadheads shot at two dots, or at one. */
final class PairLayout {

  private static final String CAUTIONS =
      "Broadheads: use a head wrench, keep blades covered, shoot only at a target rated for them "
          + "with a safe backstop. Flex carbon shafts before each shot and discard damaged ones. "
          + "Never dry fire. The bow maker's limits, range rules and local law come first.";

  private static final double STRIP = 4 * Strip.TICK_ROW + 2 * Strip.DIGIT_ROW;

  private static final double RING_RADIUS = 14;
  private static final double RING_WIDTH = 1.2;
  private static final double SPOT_RADIUS = 1.3;
  private static final double SPOKE = 6;

  /**
   * From the target's edge to the middle of a caption: far from the dots, where few arrows land.
   */
  private static final double CAPTION_INSIDE = 6;

  private PairLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(drawing, "Pair sheet", steps(id.variant()), CAUTIONS);
    MmRect body = frame.body();
    MmRect target = new MmRect(body.x(), body.y(), body.width(), body.height() - STRIP);
    drawing.box(target, Tone.LIGHT);
    List<AimDot> dots = dots(id.variant(), target, drawing);
    strip(id.units(), frame, target.bottom(), drawing);
    return frame.layout(id, "Pair sheet", dots, Optional.of(target), drawing);
  }

  private static List<String> steps(Variant variant) {
    return List.of(
        "Same distance and same aim for every arrow.",
        variant == Variant.TWO_DOTS
            ? "Field points: upper dot. Broadheads: lower dot."
            : "Shoot field points and broadheads at the one dot.",
        "Pull the arrows, then tick the boxes below.",
        "Scan or photograph the sheet.");
  }

  private static List<AimDot> dots(Variant variant, MmRect target, Drawing drawing) {
    List<AimDot> dots = new ArrayList<>();
    double top = target.y() + CAPTION_INSIDE;
    if (variant == Variant.SHARED_DOT) {
      dots.add(dot(Aim.SHARED, target.centre(), drawing));
      caption(drawing, "FIELD POINTS AND BROADHEADS", target.centre().x(), top);
      return dots;
    }
    MmPoint field = within(target, 0.29, 0.33);
    MmPoint broadhead = within(target, 0.71, 0.70);
    dots.add(dot(Aim.FIELD, field, drawing));
    dots.add(dot(Aim.BROADHEAD, broadhead, drawing));
    caption(drawing, "FIELD POINTS", field.x(), top);
    caption(drawing, "BROADHEADS", broadhead.x(), target.bottom() - CAPTION_INSIDE);
    return dots;
  }

  private static void caption(Drawing drawing, String text, double x, double y) {
    SheetFrame.caption(drawing, text, new MmPoint(x, y), 90);
  }

  private static MmPoint within(MmRect rect, double across, double down) {
    return new MmPoint(rect.x() + across * rect.width(), rect.y() + down * rect.height());
  }

  /** A ring and a spot rather than a black disc: a hole through white paper shows its whole rim. */
  private static AimDot dot(Aim aim, MmPoint centre, Drawing drawing) {
    drawing.ink.add(new Ink.Ring(centre, RING_RADIUS, RING_WIDTH));
    drawing.ink.add(new Ink.Disc(centre, SPOT_RADIUS));
    double rim = RING_RADIUS + RING_WIDTH / 2;
    if (aim == Aim.BROADHEAD) {
      spokes(centre, rim, drawing);
    }
    return new AimDot(aim, centre, rim);
  }

  /** Four spokes like blades, so that the broadheads' dot is told from the other at a distance. */
  private static void spokes(MmPoint c, double rim, Drawing drawing) {
    double end = rim + SPOKE;
    // From the middle of the ring's ink, so that no white shows where a spoke meets the round rim.
    double root = RING_RADIUS;
    drawing.stroke(c.x() - end, c.y(), c.x() - root, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x() + root, c.y(), c.x() + end, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() - end, c.x(), c.y() - root, RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() + root, c.x(), c.y() + end, RING_WIDTH, Tone.BLACK);
  }

  private static void strip(UnitSystem units, SheetFrame frame, double top, Drawing drawing) {
    Strip strip = new Strip(frame, units, top, drawing);
    strip.distance();
    strip.arrows("arrows_field", "Field points shot");
    strip.arrows("arrows_broadhead", "Broadheads shot");
    strip.changes("sheet");
  }
}
