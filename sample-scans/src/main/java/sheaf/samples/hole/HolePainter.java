package sheaf.samples.hole;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;

/** Paints torn holes: what is open, how the paper around is shaded, where shadow falls behind. */
public final class HolePainter {

  /** Finer than the page's pixels by this, so that hairlines keep their width. */
  private static final int FINE = 3;

  /** The grey that stands for "unchanged" in a map of shades. */
  private static final int UNCHANGED = 128;

  private final TornHole hole;
  private final RandomGenerator random;
  private final double half;
  private final int side;
  private final AffineTransform toPixels;

  private HolePainter(
      TornHole hole,
      double pixelsPerMm,
      double offsetX,
      double offsetY,
      int halfSide,
      RandomGenerator random) {
    this.hole = hole;
    this.random = random;
    this.half = halfSide;
    this.side = 2 * halfSide + 1;
    this.toPixels = new AffineTransform();
    toPixels.scale(FINE, FINE);
    toPixels.translate(half + 0.5 + offsetX, half + 0.5 + offsetY);
    toPixels.scale(pixelsPerMm, pixelsPerMm);
  }

  /** Pixels from the middle of a patch to its edge, enough for tears, slits and shading. */
  public static int halfSide(TornHole hole, double pixelsPerMm) {
    double reach = 3.2 * hole.radius();
    for (TornHole.Slit slit : hole.slits()) {
      reach = Math.max(reach, slit.length() + 1.5);
    }
    return (int) Math.ceil(reach * pixelsPerMm) + 2;
  }

  /**
   * Paints a hole.
   *
   * @param pixelsPerMm of the page
   * @param offsetX of the axis from the middle pixel's centre, in pixels, below 1
   * @param offsetY the same, down
   */
  public static HolePatch paint(
      TornHole hole, double pixelsPerMm, double offsetX, double offsetY, RandomGenerator random) {
    int halfSide = halfSide(hole, pixelsPerMm);
    HolePainter painter = new HolePainter(hole, pixelsPerMm, offsetX, offsetY, halfSide, random);
    return new HolePatch(painter.side, painter.open(), painter.shade(), painter.shadow());
  }

  private float[] open() {
    BufferedImage map = map(0);
    Graphics2D g = pen(map);
    for (TornHole.Slit slit : hole.slits()) {
      g.setColor(grey((1 - slit.closed()) * 255));
      g.fill(slit(slit, 1, 0));
    }
    for (TornHole.Flap flap : hole.flaps()) {
      g.setColor(grey(random.nextDouble(0.45, 1) * 255));
      g.fill(tear(flap));
    }
    g.setColor(Color.WHITE);
    g.fill(path(hole.opening(), true));
    return reduce(map, 0, 1.0 / 255);
  }

  private float[] shade() {
    BufferedImage map = map(UNCHANGED);
    Graphics2D g = pen(map);
    crumple(g);
    for (TornHole.Slit slit : hole.slits()) {
      lips(g, slit);
    }
    for (TornHole.Flap flap : hole.flaps()) {
      folded(g, flap);
    }
    tornEdge(g);
    for (TornHole.Flap flap : hole.flaps()) {
      if (flap.dragged()) {
        dragged(g, flap);
      }
    }
    return reduce(map, 0, 1.0 / UNCHANGED);
  }

  /** Soft dents and ridges in the paper around the hole. */
  private void crumple(Graphics2D g) {
    int lobes = random.nextInt(4, 10);
    for (int i = 0; i < lobes; i++) {
      double angle = random.nextDouble(2 * Math.PI);
      MmPoint centre = TornHole.polar(angle, hole.radius() * random.nextDouble(0.9, 1.6));
      double size = hole.radius() * random.nextDouble(0.25, 0.6);
      boolean dark = random.nextDouble() < 0.7;
      int strength = random.nextInt(6, 22);
      for (int ring = 6; ring >= 1; ring--) {
        double r = size * ring / 6;
        g.setColor(new Color(dark ? 40 : 200, dark ? 40 : 200, dark ? 40 : 200, strength / 2));
        g.fill(new Ellipse2D.Double(centre.x() - r, centre.y() - r * 0.6, 2 * r, 1.2 * r));
      }
    }
  }

  /** Torn paper has a thickness that light does not reach everywhere. */
  private void tornEdge(Graphics2D g) {
    List<MmPoint> edge = hole.opening();
    for (int i = 0; i < edge.size(); i++) {
      g.setColor(new Color(20, 20, 20, random.nextInt(15, 100)));
      g.setStroke(stroke(random.nextDouble(0.1, 0.25)));
      g.draw(path(List.of(edge.get(i), edge.get((i + 1) % edge.size())), false));
    }
  }

  /** A flap hangs down from its fold: darker toward its tip, its fold seen here and there. */
  private void folded(Graphics2D g, TornHole.Flap flap) {
    MmPoint tip = tip(flap);
    int steps = 5;
    double dark = random.nextDouble() < 0.35 ? 0 : 0.14 * flap.shade();
    for (int i = 1; i <= steps; i++) {
      double share = i / (double) steps;
      g.setColor(grey(UNCHANGED * (1 - dark * share)));
      g.fill(hanging(flap, tip, 1 - 0.75 * (share - 1.0 / steps)));
    }
    if (random.nextDouble() < 0.7) {
      foldLine(g, flap);
    }
    g.setColor(new Color(20, 20, 20, (int) (90 * flap.shade() * random.nextDouble())));
    g.setStroke(stroke(0.12));
    g.draw(path(List.of(hole.fold(flap).get(0), tip), false));
    tearShade(g, flap);
  }

  /** The part of a flap that lies inside a share of the shaft's radius. */
  private Path2D hanging(TornHole.Flap flap, MmPoint tip, double share) {
    Path2D body = new Path2D.Double();
    body.moveTo(tip.x(), tip.y());
    for (MmPoint at : hole.fold(flap)) {
      body.lineTo(at.x() * share, at.y() * share);
    }
    body.closePath();
    return body;
  }

  /**
   * A stretch of the fold, a faint dark line with a lighter one beside it where paper is raised.
   */
  private void foldLine(Graphics2D g, TornHole.Flap flap) {
    List<MmPoint> fold = hole.fold(flap);
    int from = random.nextInt(0, fold.size() / 2);
    int to = random.nextInt(fold.size() / 2 + 1, fold.size() + 1);
    Path2D line = path(fold.subList(from, to), false);
    g.setColor(new Color(30, 30, 30, (int) (90 * flap.shade() * random.nextDouble())));
    g.setStroke(stroke(random.nextDouble(0.08, 0.3)));
    g.draw(line);
    AffineTransform before = g.getTransform();
    g.scale(1.05, 1.05);
    g.setColor(new Color(190, 190, 190, random.nextInt(0, 60)));
    g.draw(line);
    g.setTransform(before);
  }

  private void tearShade(Graphics2D g, TornHole.Flap flap) {
    g.setColor(new Color(30, 30, 30, random.nextInt(40, 120)));
    g.setStroke(stroke(0.12));
    Path2D line = new Path2D.Double();
    MmPoint start = TornHole.polar(flap.from(), hole.radius());
    MmPoint end = TornHole.polar(flap.from(), hole.radius() + flap.tear());
    MmPoint bend = bent(flap);
    line.moveTo(start.x(), start.y());
    line.quadTo(bend.x(), bend.y(), end.x(), end.y());
    g.draw(line);
  }

  private MmPoint bent(TornHole.Flap flap) {
    MmPoint middle = TornHole.polar(flap.from(), hole.radius() + flap.tear() / 2);
    return new MmPoint(
        middle.x() - flap.bend() * Math.sin(flap.from()),
        middle.y() + flap.bend() * Math.cos(flap.from()));
  }

  private MmPoint tip(TornHole.Flap flap) {
    double t = 0.5 + flap.lean() * 0.3;
    double angle = flap.from() + t * (flap.to() - flap.from());
    return TornHole.polar(angle, hole.radius() * (1 - flap.closing()));
  }

  /** A flap that was drawn back out lies on the paper outside, its torn edge casting a shadow. */
  private void dragged(Graphics2D g, TornHole.Flap flap) {
    double middle = (flap.from() + flap.to()) / 2;
    MmPoint tip = TornHole.polar(middle, hole.radius() * random.nextDouble(1.25, 1.6));
    Path2D body = path(hole.fold(flap), false);
    body.lineTo(tip.x(), tip.y());
    body.closePath();
    g.setColor(grey(UNCHANGED * random.nextDouble(0.9, 1.02)));
    g.fill(body);
    g.setColor(new Color(20, 20, 20, 110));
    g.setStroke(stroke(0.15));
    g.draw(body);
  }

  /** The paper bends down along a slit: one lip is darker than the other. */
  private void lips(Graphics2D g, TornHole.Slit slit) {
    double strength = random.nextDouble(25, 90);
    double wide = slit.width() + 0.5;
    g.setColor(new Color(40, 40, 40, (int) strength / 2));
    g.fill(slit(slit, wide / slit.width(), 0.15));
    g.setColor(new Color(10, 10, 10, (int) strength));
    g.setStroke(stroke(0.1));
    Path2D line = new Path2D.Double();
    int steps = slit.wander().length - 1;
    for (int i = 0; i <= steps; i++) {
      MmPoint at = along(slit, i / (double) steps, 0);
      if (i == 0) {
        line.moveTo(at.x(), at.y());
      } else {
        line.lineTo(at.x(), at.y());
      }
    }
    g.draw(line);
  }

  /** The paper's edge keeps light off what lies behind it, on one side. */
  private float[] shadow() {
    BufferedImage map = map(UNCHANGED);
    Graphics2D g = pen(map);
    double direction = random.nextDouble(2 * Math.PI);
    double depth = random.nextDouble(0.3, 1.0);
    double dark = random.nextDouble(0.06, 0.3);
    Path2D open = path(hole.opening(), true);
    int steps = 6;
    for (int i = 0; i <= steps; i++) {
      double share = i / (double) steps;
      g.setColor(grey(UNCHANGED * (1 - dark * (1 - share))));
      AffineTransform before = g.getTransform();
      g.translate(share * depth * Math.cos(direction), share * depth * Math.sin(direction));
      g.fill(open);
      g.setTransform(before);
    }
    for (TornHole.Slit slit : hole.slits()) {
      g.setColor(grey(UNCHANGED * (1 - random.nextDouble(0.5, 1.5) * dark)));
      g.fill(slit(slit, 1.2, 0));
    }
    return reduce(map, 0, 1.0 / UNCHANGED);
  }

  private Path2D tear(TornHole.Flap flap) {
    double across = flap.gape() / 2;
    double sx = -Math.sin(flap.from()) * across;
    double sy = Math.cos(flap.from()) * across;
    MmPoint mouth = TornHole.polar(flap.from(), hole.radius() * 0.95);
    MmPoint end = TornHole.polar(flap.from(), hole.radius() + flap.tear());
    MmPoint bend = bent(flap);
    Path2D tear = new Path2D.Double();
    tear.moveTo(mouth.x() - sx, mouth.y() - sy);
    tear.quadTo(bend.x() - sx * 0.5, bend.y() - sy * 0.5, end.x(), end.y());
    tear.quadTo(bend.x() + sx * 0.5, bend.y() + sy * 0.5, mouth.x() + sx, mouth.y() + sy);
    tear.closePath();
    return tear;
  }

  private Path2D slit(TornHole.Slit slit, double widening, double shift) {
    int steps = slit.wander().length - 1;
    Path2D path = new Path2D.Double();
    for (int i = 0; i <= 2 * steps + 1; i++) {
      int step = i <= steps ? i : 2 * steps + 1 - i;
      double t = step / (double) steps;
      double width = slit.width() * widening * Math.pow(1 - t, 0.6) / 2 + 0.03;
      MmPoint at = along(slit, t, (i <= steps ? -width : width) + shift);
      if (i == 0) {
        path.moveTo(at.x(), at.y());
      } else {
        path.lineTo(at.x(), at.y());
      }
    }
    path.closePath();
    return path;
  }

  /** A place on a slit: so far along it, so far to its side. */
  private MmPoint along(TornHole.Slit slit, double t, double aside) {
    int steps = slit.wander().length - 1;
    int before = Math.min(steps - 1, (int) (t * steps));
    double within = t * steps - before;
    double side = aside + slit.wander()[before] * (1 - within) + slit.wander()[before + 1] * within;
    double from = hole.radius() * 0.4;
    double distance = from + t * (slit.length() - from);
    return new MmPoint(
        distance * Math.cos(slit.angle()) - side * Math.sin(slit.angle()),
        distance * Math.sin(slit.angle()) + side * Math.cos(slit.angle()));
  }

  private BufferedImage map(int tone) {
    BufferedImage map = new BufferedImage(side * FINE, side * FINE, BufferedImage.TYPE_BYTE_GRAY);
    java.util.Arrays.fill(
        ((DataBufferByte) map.getRaster().getDataBuffer()).getData(), (byte) tone);
    return map;
  }

  private Graphics2D pen(BufferedImage map) {
    Graphics2D g = map.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setTransform(toPixels);
    return g;
  }

  private static BasicStroke stroke(double mm) {
    return new BasicStroke((float) mm, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** A colour that lands in a grey map as the number itself. */
  private static Color grey(double tone) {
    int value = (int) Math.max(0, Math.min(255, Math.round(tone)));
    return new Color(value, value, value);
  }

  private static Path2D path(List<MmPoint> points, boolean close) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).x(), points.get(0).y());
    for (MmPoint point : points.subList(1, points.size())) {
      path.lineTo(point.x(), point.y());
    }
    if (close) {
      path.closePath();
    }
    return path;
  }

  /** Averages the fine map down to the page's pixels. */
  private float[] reduce(BufferedImage map, double base, double gain) {
    byte[] fine = ((DataBufferByte) map.getRaster().getDataBuffer()).getData();
    int fineSide = side * FINE;
    float[] coarse = new float[side * side];
    for (int y = 0; y < fineSide; y++) {
      for (int x = 0; x < fineSide; x++) {
        coarse[y / FINE * side + x / FINE] += fine[y * fineSide + x] & 0xFF;
      }
    }
    for (int i = 0; i < coarse.length; i++) {
      coarse[i] = (float) (base + gain * coarse[i] / (FINE * FINE));
    }
    return coarse;
  }
}
