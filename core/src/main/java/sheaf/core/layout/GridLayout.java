package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The group sheet and the sight-in sheet, version 1: a dot on a grid of known squares. */
final class GridLayout {

  private static final String CAUTIONS =
      "Shoot only at a target rated for these arrows and heads, with a safe backstop. Broadheads: "
          + "head wrench, blades covered. Flex carbon shafts before each shot and discard damaged "
          + "ones. Never dry fire. The bow maker's limits, range rules and local law come first.";

  /** Room for the numbers at the grid's left and foot, kept on all four sides. */
  private static final double NUMBERS = 5.5;

  /** Room over and under a sight-in sheet's grid for its words. */
  private static final double WORDS = 6;

  private static final double RING_RADIUS = 14;
  private static final double RING_WIDTH = 1.2;
  private static final double SPOT_RADIUS = 1.3;

  /** Letters of the words that say how to move the sight, in points. */
  private static final double WAY_SIZE = 8;

  /** Less than the smallest square, and too little for all the words on one line. */
  private static final double WAY_WIDTH = 17;

  private static final double WAY_GAP = 1.5;

  private final LayoutId id;
  private final SheetFrame frame;
  private final Drawing drawing = new Drawing();
  private final boolean sightIn;
  private final double square;

  private GridLayout(LayoutId id) {
    this.id = id;
    this.frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    this.sightIn = id.variant() == Variant.SIGHT_GRID;
    this.square = id.units().gridSquareMm();
  }

  static Layout of(LayoutId id) {
    return new GridLayout(id).draw();
  }

  private Layout draw() {
    String title = sightIn ? "Sight-in sheet" : "Group sheet";
    frame.draw(drawing, title, steps(), CAUTIONS);
    MmRect body = frame.body();
    double strip = 2 * Strip.TICK_ROW + (sightIn ? 2 * Strip.DIGIT_ROW : 0) + Strip.DIGIT_ROW;
    MmRect room = new MmRect(body.x(), body.y(), body.width(), body.height() - strip);
    MmRect grid = grid(room);
    lines(grid);
    MmPoint c = grid.centre();
    drawing.ink.add(new Ink.Ring(c, RING_RADIUS, RING_WIDTH));
    drawing.ink.add(new Ink.Disc(c, SPOT_RADIUS));
    if (sightIn) {
      ways(grid);
    }
    strip(room.bottom());
    AimDot dot = new AimDot(Aim.SHARED, c, RING_RADIUS + RING_WIDTH / 2);
    return frame.layout(id, title, List.of(dot), Optional.of(grid), drawing);
  }

  private String squares() {
    return id.units() == UnitSystem.INCHES ? "1 in" : "2 cm";
  }

  private List<String> steps() {
    return sightIn
        ? List.of(
            "Shoot three arrows or more at the spot.",
            "One square is %s. Find the group's middle.".formatted(squares()),
            "Move the sight toward the hits, as printed.",
            "Fill in below, scan, shoot a new sheet.")
        : List.of(
            "Same distance and same aim for every arrow.",
            "Shoot three arrows or more at the spot.",
            "One square is %s. Fill in below.".formatted(squares()),
            "Scan or photograph the sheet.");
  }

  /** As large as whole and half squares allow, around the middle of its room. */
  private MmRect grid(MmRect room) {
    double over = sightIn ? WORDS : NUMBERS;
    double halfWidth = halves(room.width() / 2 - NUMBERS);
    double halfHeight = halves(room.height() / 2 - Math.max(over, NUMBERS));
    MmPoint c = room.centre();
    return new MmRect(c.x() - halfWidth, c.y() - halfHeight, 2 * halfWidth, 2 * halfHeight);
  }

  private double halves(double length) {
    return Math.floor(length / (square / 2)) * square / 2;
  }

  private void lines(MmRect grid) {
    MmPoint c = grid.centre();
    drawing.box(grid, Tone.BLACK);
    int across = (int) Math.floor(grid.width() / 2 / square - 0.01);
    for (int i = -across; i <= across; i++) {
      double x = c.x() + i * square;
      grid(new MmPoint(x, grid.y()), new MmPoint(x, grid.bottom()), i);
      number(i, new MmRect(x - 4, grid.bottom() + 0.8, 8, Drawing.lines(1, 8)), Align.CENTRE);
    }
    MmRect corner = new MmRect(grid.right() - 5, grid.bottom() + 0.8, 5, Drawing.lines(1, 8));
    boolean inches = id.units() == UnitSystem.INCHES;
    drawing.label(inches ? "in" : "cm", corner, 8, Weight.REGULAR, Align.RIGHT);
    int down = (int) Math.floor(grid.height() / 2 / square - 0.01);
    for (int i = -down; i <= down; i++) {
      double y = c.y() + i * square;
      grid(new MmPoint(grid.x(), y), new MmPoint(grid.right(), y), i);
      double height = Drawing.lines(1, 8);
      number(i, new MmRect(grid.x() - 5, y - height / 2, 4, height), Align.RIGHT);
    }
  }

  /** The two lines through the dot are black, but spare its inside. */
  private void grid(MmPoint from, MmPoint to, int index) {
    if (index != 0) {
      drawing.ink.add(new Ink.Stroke(from, to, Drawing.LINE, Tone.LIGHT));
      return;
    }
    double length = from.distanceTo(to);
    double share = (length / 2 - RING_RADIUS) / length;
    MmPoint near = from.plus(to.minus(from).times(share));
    MmPoint far = to.plus(from.minus(to).times(share));
    drawing.ink.add(new Ink.Stroke(from, near, 2 * Drawing.LINE, Tone.BLACK));
    drawing.ink.add(new Ink.Stroke(far, to, 2 * Drawing.LINE, Tone.BLACK));
  }

  /** How far a line is from the dot, in inches or centimetres. */
  private void number(int index, MmRect rect, Align align) {
    int step = id.units() == UnitSystem.INCHES ? 1 : 2;
    drawing.label(String.valueOf(step * Math.abs(index)), rect, 8, Weight.REGULAR, align);
  }

  /**
   * Common practice, no published source: a sight is moved the way the arrows went. In the whole
   * squares that end the two black lines, far from the dot, where few arrows land.
   */
  private void ways(MmRect grid) {
    MmPoint c = grid.centre();
    double height = Drawing.lines(2, WAY_SIZE);
    double across = Math.floor(grid.width() / 2 / square + 0.01) * square;
    double down = Math.floor(grid.height() / 2 / square + 0.01) * square;
    double beside = c.x() + WAY_GAP;
    double over = c.y() - WAY_GAP - height;
    way("Hits high: sight up", beside, c.y() - down + WAY_GAP, Align.LEFT);
    way("Hits low: sight down", beside, c.y() + down - WAY_GAP - height, Align.LEFT);
    way("Hits left: sight left", c.x() - across + WAY_GAP, over, Align.LEFT);
    way("Hits right: sight right", c.x() + across - WAY_GAP - WAY_WIDTH, over, Align.RIGHT);
  }

  private void way(String text, double x, double y, Align align) {
    MmRect rect = new MmRect(x, y, WAY_WIDTH, Drawing.lines(2, WAY_SIZE));
    drawing.label(text, rect, WAY_SIZE, Weight.BOLD, align);
  }

  private void strip(double top) {
    Strip strip = new Strip(frame, id.units(), top, drawing);
    strip.distance();
    strip.arrows("arrows_shot", "Arrows shot");
    strip.words("head", "Head", "on these arrows", List.of("field points", "broadheads"));
    if (sightIn) {
      NumberForm scale = NumberForm.decimal(2, 1, "");
      strip.beforeAndAfter("sight_height", "Sight height", "mark on its scale", scale);
      strip.beforeAndAfter("sight_side", "Sight side", "mark on its scale", scale);
    }
  }
}
