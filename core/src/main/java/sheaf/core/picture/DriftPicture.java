package sheaf.core.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Shape.Side;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;
import sheaf.core.record.Drifted;

/**
 * What moved on a bow between two visits: a bar for each number, as long as it moved in tolerances,
 * with the tolerance itself as dashed lines.
 */
public final class DriftPicture {

  /** Room for what the measures are called, in millimetres. */
  private static final double NAMES = 42;

  private static final double SIZE = 7;
  private static final double ROW = 6;
  private static final double BAR = 2.6;

  /** Bars of larger drifts are cut off here, in tolerances; their numbers stand beside. */
  private static final double LONGEST = 4;

  private DriftPicture() {}

  /**
   * The picture; as high as its rows need.
   *
   * @param drifted at least one
   * @param tolerances by key; what has none is drawn as if it moved by one
   * @param room how wide it may be
   */
  public static Picture of(
      List<Drifted> drifted, Map<String, Drifted.Tolerance> tolerances, MmRect room) {
    double height = drifted.size() * ROW + 3;
    MmRect frame = new MmRect(room.x(), room.y(), room.width(), height);
    double half = (room.width() - NAMES - 4) / 2;
    double zero = room.x() + NAMES + 2 + half;
    double perTolerance = half / LONGEST;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(upright(zero, frame, Tone.FAINT, Stroke.WHOLE));
    shapes.add(upright(zero - perTolerance, frame, Tone.FAINT, Stroke.DASHED));
    shapes.add(upright(zero + perTolerance, frame, Tone.FAINT, Stroke.DASHED));
    double y = frame.y() + 1.5 + ROW / 2;
    for (Drifted one : drifted) {
      double length = perTolerance * inTolerances(one, tolerances);
      if (length != 0) {
        MmRect bar = new MmRect(Math.min(zero, zero + length), y - BAR / 2, Math.abs(length), BAR);
        shapes.add(new Shape.Patch(bar, Tone.INK));
      }
      MmPoint end = new MmPoint(frame.x() + NAMES, y + 0.9);
      shapes.add(new Shape.Words(one.label(), end, SIZE, Side.LEFT_OF));
      y += ROW;
    }
    shapes.add(new Shape.Outline(frame, 0.3));
    return new Picture(frame, words(drifted), shapes);
  }

  private static Shape upright(double x, MmRect frame, Tone tone, Stroke stroke) {
    return new Shape.Line(
        new MmPoint(x, frame.y()), new MmPoint(x, frame.bottom()), 0.3, tone, stroke);
  }

  private static double inTolerances(Drifted one, Map<String, Drifted.Tolerance> tolerances) {
    Drifted.Tolerance most = tolerances.get(one.key());
    if (most == null || one.was().unit().isEmpty() || one.change() == 0) {
      return Math.signum(one.change());
    }
    double tolerance = most.unit().convert(most.value(), one.was().unit().get());
    return Math.max(-LONGEST, Math.min(LONGEST, one.change() / tolerance));
  }

  private static String words(List<Drifted> drifted) {
    List<String> parts = new ArrayList<>();
    for (Drifted one : drifted) {
      parts.add(
          one.change() == 0
              ? one.label() + " is another"
              : String.format(
                  Locale.ROOT, "%s %s", one.label(), one.change() > 0 ? "grew" : "shrank"));
    }
    return "What moved, in tolerances of the shop: " + String.join(", ", parts) + ".";
  }
}
