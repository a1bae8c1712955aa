package sheaf.samples.scene;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.SplittableRandom;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.samples.raster.Clouds;

/** Wears a page: binder holes, stains, patches, a corner that is gone. */
final class Wearing {

  private final Page page;
  private final Backdrop behind;
  private final double light;
  private final SplittableRandom random;

  Wearing(Page page, Backdrop behind, double light, SplittableRandom random) {
    this.page = page;
    this.behind = behind;
    this.light = light;
    this.random = random;
  }

  void wear(Wear wear, Layout layout) {
    MmRect room = layout.target().orElse(layout.page().grow(-30));
    for (int i = 0; i < wear.stains(); i++) {
      stain(somewhere(room));
    }
    for (int i = 0; i < wear.patches(); i++) {
      patch(somewhere(room));
    }
    if (wear.punched()) {
      binder(layout.page());
    }
    if (wear.misfed()) {
      MmPoint mark = layout.marks().get(random.nextInt(layout.marks().size())).square().centre();
      punch(
          new MmPoint(mark.x() + 3 * random.nextGaussian(), mark.y() + 3 * random.nextGaussian()));
    }
    if (wear.tornCorner()) {
      tearCorner(layout.page());
    }
  }

  private MmPoint somewhere(MmRect room) {
    return new MmPoint(
        random.nextDouble(room.x(), room.right()), random.nextDouble(room.y(), room.bottom()));
  }

  private void binder(MmRect sheet) {
    double inset = OfficePunch.INSET + random.nextGaussian();
    double askew = 3 * random.nextGaussian();
    for (int side = -1; side <= 1; side += 2) {
      double along = askew + side * OfficePunch.APART / 2;
      punch(
          random.nextInt(4) > 0
              ? new MmPoint(inset, sheet.height() / 2 + along)
              : new MmPoint(sheet.width() / 2 + along, inset));
    }
  }

  private void punch(MmPoint at) {
    OfficePunch.through(page, at, behind, light);
  }

  private void tearCorner(MmRect sheet) {
    double across = random.nextDouble(8, 30);
    double down = random.nextDouble(8, 30);
    boolean right = random.nextBoolean();
    boolean bottom = random.nextBoolean();
    Clouds ragged = new Clouds(2, random);
    double steep = Math.hypot(across, down);
    MmRect corner =
        new MmRect(
            right ? sheet.right() - across - 2 : 0,
            bottom ? sheet.bottom() - down - 2 : 0,
            across + 2,
            down + 2);
    page.take(
        corner,
        (x, y) -> {
          double in = right ? sheet.right() - x : x;
          double up = bottom ? sheet.bottom() - y : y;
          double line = across * down - in * down - up * across;
          return line / steep + 0.4 * ragged.at(x, y);
        },
        behind,
        light);
  }

  /** Grease lets paper look darker; coffee leaves a darker edge. */
  private void stain(MmPoint at) {
    boolean coffee = random.nextBoolean();
    double radius = random.nextDouble(2, 12);
    double depth = random.nextDouble(0.03, coffee ? 0.25 : 0.12);
    Clouds shape = new Clouds(0.8 * radius, random);
    float[] tint = coffee ? new float[] {0.5f, 0.8f, 1.3f} : new float[] {0.9f, 0.95f, 1.1f};
    page.tint(
        MmRect.square(at, 3 * radius),
        (x, y) -> {
          double in = radius - Math.hypot(x - at.x(), y - at.y()) + 0.25 * radius * shape.at(x, y);
          double soft = 1 / (1 + Math.exp(-in / (coffee ? 0.15 : 0.5)));
          double edge = coffee ? 0.35 + 0.65 * Math.exp(-Math.max(0, in)) : 1;
          return depth * soft * edge;
        },
        tint);
  }

  /** A round sticker or a strip of tape, a little lighter or darker than the sheet. */
  private void patch(MmPoint at) {
    boolean tape = random.nextBoolean();
    double side = random.nextDouble(15, 22);
    int tone = random.nextInt(225, 255);
    Color colour = tape ? new Color(tone, tone - 12, tone - 45) : new Color(tone, tone, tone);
    AffineTransform turned =
        AffineTransform.getRotateInstance(random.nextGaussian() * 0.6, at.x(), at.y());
    var shape =
        tape
            ? new Rectangle2D.Double(at.x() - 0.9 * side, at.y() - 9, 1.8 * side, 18)
            : new Ellipse2D.Double(at.x() - side / 2, at.y() - side / 2, side, side);
    Graphics2D g = page.pen(new Color(0, 0, 0, 60));
    g.transform(
        AffineTransform.getTranslateInstance(0.15 * Math.cos(light), 0.15 * Math.sin(light)));
    g.fill(turned.createTransformedShape(shape));
    g.dispose();
    Graphics2D over = page.pen(colour);
    over.fill(turned.createTransformedShape(shape));
    over.dispose();
  }
}
