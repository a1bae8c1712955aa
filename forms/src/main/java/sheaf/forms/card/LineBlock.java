package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.Drift;
import sheaf.core.group.LineShot;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.result.LineVerdict;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.Pen;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * The line sheet as a plot: left and right of the line as shot, near distances at the top.
 *
 * @param shots at least one
 */
record LineBlock(List<LineShot> shots) implements Block {

  private static final double WIDEST = 62;
  private static final double SHARE = 0.62;
  private static final double HEIGHT = 36;
  private static final double BELOW = 2;
  private static final double GAP = 4;

  /** Room for the distances beside the plot. */
  private static final double MARGIN = 13;

  private static final double SMALL = 7;
  private static final double NORMAL = 8;

  /** Shots all on the line still get this much room to each side, in true millimetres. */
  private static final double LEAST_REACH = 10;

  private static final Color LINE_GREY = new Color(110, 110, 110);

  @Override
  public double height(Typeface typeface, double width) {
    double room = width - plotWidth(width) - GAP;
    return Math.max(HEIGHT, typeface.heightOf(words(), room, Weight.REGULAR, NORMAL)) + BELOW;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    MmRect all = new MmRect(room.x(), room.y(), plotWidth(room.width()), HEIGHT);
    String words = words();
    pen.figure(
        document,
        "Impact across the line against distance, %d shots. %s".formatted(shots.size(), words),
        all,
        p -> plot(p, all));
    double x = all.right() + GAP;
    MmRect beside = new MmRect(x, room.y(), room.right() - x, room.height());
    pen.text(document.add("P"), words, beside, Weight.REGULAR, NORMAL, Align.LEFT);
  }

  private static double plotWidth(double width) {
    return Math.min(SHARE * width, WIDEST);
  }

  private String words() {
    return CardWords.bound(LineVerdict.of(shots));
  }

  private UnitSystem units() {
    return shots.get(0).distance().unit() == Unit.YARD ? UnitSystem.INCHES : UnitSystem.METRIC;
  }

  private double farthestMetres() {
    return shots.stream().mapToDouble(s -> metres(s.distance())).max().orElseThrow();
  }

  private static double metres(Distance distance) {
    return distance.millimetres() / 1000;
  }

  private void plot(Pen pen, MmRect all) throws IOException {
    MmRect plot = new MmRect(all.x() + MARGIN, all.y(), all.width() - MARGIN, all.height());
    double reach =
        1.15 * shots.stream().mapToDouble(s -> Math.abs(s.rightMm())).max().orElseThrow();
    double perMm = (plot.width() / 2 - 2) / Math.max(reach, LEAST_REACH);
    double perMetre = (plot.height() - 9) / farthestMetres();
    MmPoint zero = new MmPoint(plot.centre().x(), plot.y() + 1.5);
    pen.colour(LINE_GREY);
    pen.width(0.5);
    pen.line(new MmPoint(zero.x(), plot.y()), new MmPoint(zero.x(), plot.bottom() - 6));
    pen.colour(Color.BLACK);
    distances(pen, all, zero.y(), perMetre);
    Optional<Drift> fit = Drift.of(shots);
    if (fit.isPresent()) {
      pen.within(plot, p -> fitted(p, fit.get(), zero, perMm, perMetre));
    }
    for (LineShot shot : shots) {
      pen.disc(
          new MmPoint(
              zero.x() + shot.rightMm() * perMm, zero.y() + metres(shot.distance()) * perMetre),
          0.9);
    }
    pen.width(0.3);
    pen.outline(plot);
    ScaleBar.fit(units(), perMm, plot.width()).draw(plot, pen);
  }

  private void fitted(Pen pen, Drift fit, MmPoint zero, double perMm, double perMetre)
      throws IOException {
    double far = farthestMetres();
    pen.width(0.4);
    pen.dashes(1.6, 1.1);
    pen.line(
        new MmPoint(zero.x() + fit.at(0) * perMm, zero.y()),
        new MmPoint(zero.x() + fit.at(far) * perMm, zero.y() + far * perMetre));
    pen.dashes();
  }

  /** The distances that were shot from; those too close to the last one written are left out. */
  private void distances(Pen pen, MmRect all, double top, double perMetre) throws IOException {
    double lowest = Double.NEGATIVE_INFINITY;
    List<Distance> distances =
        shots.stream()
            .map(LineShot::distance)
            .distinct()
            .sorted((a, b) -> Double.compare(a.millimetres(), b.millimetres()))
            .toList();
    for (Distance distance : distances) {
      double y = top + metres(distance) * perMetre;
      if (y - lowest >= 3) {
        String words = distance.toString();
        double width = pen.widthOf(words, Weight.REGULAR, SMALL);
        pen.text(words, all.x() + MARGIN - 1.5 - width, y + 0.9, Weight.REGULAR, SMALL);
        lowest = y;
      }
    }
  }
}
