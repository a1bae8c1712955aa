package sheaf.samples.tear;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.samples.hole.Canvas;
import sheaf.samples.hole.HolePatch;
import sheaf.samples.hole.PaperLight;
import sheaf.samples.raster.Clouds;
import sheaf.samples.raster.Plane;

/** Paints a furrow: its opening, its hanging sides, the bent paper beside it. */
final class FurrowPainter {

  /** Room beside a furrow for shading and shadow, in radii. */
  private static final double AROUND = 2.2;

  /** Half of what a tear that runs outward gapes at its mouth, in millimetres. */
  private static final double HALF_SPLIT = 0.14;

  /** Width of the crease along a fold, in millimetres. */
  private static final double CREASE = 0.15;

  private final Furrow furrow;
  private final Canvas canvas;
  private final double light;
  private final RandomGenerator random;

  private FurrowPainter(Furrow furrow, Canvas canvas, double light, RandomGenerator random) {
    this.furrow = furrow;
    this.canvas = canvas;
    this.light = light;
    this.random = random;
  }

  /**
   * Paints a furrow that begins at the canvas' axis.
   *
   * @param light angle from which the light comes, in radians
   */
  static HolePatch paint(
      Furrow furrow,
      double pixelsPerMm,
      double right,
      double down,
      double light,
      RandomGenerator random) {
    double around = AROUND * furrow.radius();
    MmPoint end = furrow.place(furrow.steps(), 0);
    double[] reach = {
      Math.min(0, end.x()) - around,
      Math.min(0, end.y()) - around,
      Math.max(0, end.x()) + around,
      Math.max(0, end.y()) + around
    };
    Canvas canvas = new Canvas(reach, pixelsPerMm, right, down);
    return new FurrowPainter(furrow, canvas, light, random).patch();
  }

  private HolePatch patch() {
    PaperLight torn = new PaperLight(canvas, light, random);
    Plane open = canvas.drawn(this::openings);
    Plane shade = torn.lit(relief());
    Plane bare = canvas.plane();
    hanging(shade);
    torn.edges(open, shade, bare);
    Plane behind = torn.shadow(open);
    for (int side = 0; side < 2; side++) {
      for (Furrow.Piece piece : furrow.sides().get(side).pieces()) {
        if (piece.dragged() > 0) {
          lay(torn, side, piece, open, shade, bare);
        }
      }
    }
    return canvas.patch(open, shade, behind, bare);
  }

  private void openings(Graphics2D g) {
    g.setColor(Canvas.level(1));
    g.fill(Canvas.closed(furrow.opening()));
    for (int side = 0; side < 2; side++) {
      for (Furrow.Piece piece : furrow.sides().get(side).pieces()) {
        if (piece.split() > 0) {
          g.fill(Canvas.closed(split(side, piece)));
        }
      }
    }
  }

  /** A narrow tear that runs outward where two pieces of a side part. */
  private List<MmPoint> split(int side, Furrow.Piece piece) {
    double[] edge = furrow.sides().get(side).edge();
    double[] fold = furrow.sides().get(side).fold();
    int at = piece.from();
    double outward = side == 0 ? -1 : 1;
    double tip = furrow.aside(side, fold, at) + outward * piece.split();
    double half = HALF_SPLIT / Furrow.STEP;
    return List.of(
        furrow.place(at - half, furrow.aside(side, edge, at)),
        furrow.place(at + piece.lean() / Furrow.STEP, tip),
        furrow.place(at + half, furrow.aside(side, edge, at)));
  }

  /** Paper is bent beside the furrow, now up, now down. */
  private Plane relief() {
    double radius = furrow.radius();
    Clouds wide = new Clouds(0.9 * radius, random);
    Clouds narrow = new Clouds(0.35 * radius, random);
    Clouds along = new Clouds(5, random);
    double strength = radius * random.nextDouble(0.04, 0.1);
    double reach = radius * random.nextDouble(0.3, 0.55);
    double ridge = radius * random.nextDouble(-0.06, 0.1);
    Plane height = canvas.plane();
    for (int row = 0; row < height.height(); row++) {
      for (int column = 0; column < height.width(); column++) {
        double x = canvas.x(column);
        double y = canvas.y(row);
        double outside = Math.max(0, away(x, y) - radius) / reach;
        double near = Math.exp(-outside * outside * 1.4);
        if (near > 0.002) {
          double bumps = wide.at(x, y) + 0.45 * narrow.at(x, y);
          double here = Math.max(0.15, 0.6 + 0.7 * along.at(x, y));
          height.values()[row * height.width() + column] =
              (float) (near * here * (strength * bumps + ridge * Math.exp(-1.5 * outside)));
        }
      }
    }
    return height;
  }

  /** How far a place lies from the straight way between both ends. */
  private double away(double x, double y) {
    double along = x * Math.cos(furrow.angle()) + y * Math.sin(furrow.angle());
    double right = y * Math.cos(furrow.angle()) - x * Math.sin(furrow.angle());
    double beyond = along - Math.max(0, Math.min(furrow.length(), along));
    return Math.hypot(beyond, right);
  }

  /** Sides that hang behind: darker or brighter than the sheet, with a crease at the fold. */
  private void hanging(Plane shade) {
    double creases = random.nextDouble(0, 0.3);
    Clouds uneven = new Clouds(0.3 * furrow.radius(), random);
    double facing = Math.sin(furrow.angle() - light);
    for (int row = 0; row < shade.height(); row++) {
      for (int column = 0; column < shade.width(); column++) {
        double x = canvas.x(column);
        double y = canvas.y(row);
        double along = x * Math.cos(furrow.angle()) + y * Math.sin(furrow.angle());
        if (along >= 0 && along <= furrow.length()) {
          double right = y * Math.cos(furrow.angle()) - x * Math.sin(furrow.angle());
          shade.values()[row * shade.width() + column] *=
              (float) tone(along, right, creases, uneven.at(x, y), facing);
        }
      }
    }
  }

  private double tone(double along, double right, double creases, double uneven, double facing) {
    int step = (int) Math.round(along / furrow.length() * furrow.steps());
    double off = right - furrow.middle()[step];
    int side = off < 0 ? 0 : 1;
    double[] fold = furrow.sides().get(side).fold();
    double in = fold[step] - Math.abs(off);
    Furrow.Piece piece = piece(side, step);
    if (in < -2 * CREASE || piece.dragged() > 0) {
      return 1;
    }
    double near = in / CREASE;
    double dark = Math.exp(-near * near) * creases * Math.max(0, 0.35 + 1.2 * uneven);
    double length = Math.max(0.2, fold[step] - furrow.sides().get(side).edge()[step]);
    double share = Math.max(0, Math.min(1, in / length));
    double toward = side == 0 ? -facing : facing;
    double own = -0.02 - 0.24 * piece.slope() * piece.slope() - 0.09 * toward;
    return (1 - dark) * (1 + Math.max(-0.4, Math.min(0.05, own)) * (0.35 + 0.65 * share));
  }

  private Furrow.Piece piece(int side, int step) {
    List<Furrow.Piece> pieces = furrow.sides().get(side).pieces();
    return pieces.stream()
        .filter(piece -> step <= piece.to())
        .findFirst()
        .orElse(pieces.get(pieces.size() - 1));
  }

  /** A piece that was drawn back to the front lies beside the furrow and shows its own back. */
  private void lay(
      PaperLight torn, int side, Furrow.Piece piece, Plane open, Plane shade, Plane bare) {
    double[] fold = furrow.sides().get(side).fold();
    double outward = side == 0 ? -1 : 1;
    List<MmPoint> outline = new ArrayList<>();
    for (int i = piece.from(); i <= piece.to(); i++) {
      outline.add(furrow.place(i, furrow.aside(side, fold, i)));
    }
    double ragged = 0;
    for (int i = piece.to(); i >= piece.from(); i--) {
      double t = (i - piece.from()) / (double) Math.max(1, piece.to() - piece.from());
      ragged = 0.6 * ragged + random.nextGaussian() * 0.12;
      double rise = Math.pow(Math.sin(Math.PI * t), 0.5) * piece.dragged();
      double reach = Math.max(0, rise + Math.min(1, 3 * rise) * ragged);
      outline.add(furrow.place(i, furrow.aside(side, fold, i) + outward * reach));
    }
    torn.lay(outline, (x, y) -> away(x, y) / furrow.radius() - 1, open, shade, bare);
  }
}
