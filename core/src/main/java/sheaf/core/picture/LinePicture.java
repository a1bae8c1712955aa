package sheaf.core.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheaf.core.group.Drift;
import sheaf.core.group.LineShot;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Shape.Side;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;
import sheaf.core.result.LineVerdict;

/** The line sheet as a plot: left and right of the line as shot, near distances at the top. */
public final class LinePicture {

  /** Room for the distances beside the plot, in millimetres. */
  private static final double MARGIN = 13;

  private static final double SMALL = 7;

  /** Shots all on the line still get this much room to each side, in true millimetres. */
  private static final double LEAST_REACH = 10;

  private final List<LineShot> shots;
  private final MmRect all;
  private final MmRect plot;
  private final double perMm;
  private final double perMetre;
  private final MmPoint zero;
  private final List<Shape> shapes = new ArrayList<>();

  private LinePicture(List<LineShot> shots, MmRect all) {
    this.shots = shots;
    this.all = all;
    this.plot = new MmRect(all.x() + MARGIN, all.y(), all.width() - MARGIN, all.height());
    double reach =
        1.15 * shots.stream().mapToDouble(s -> Math.abs(s.rightMm())).max().orElseThrow();
    this.perMm = (plot.width() / 2 - 2) / Math.max(reach, LEAST_REACH);
    this.perMetre = (plot.height() - 9) / farthestMetres();
    this.zero = new MmPoint(plot.centre().x(), plot.y() + 1.5);
  }

  /**
   * The plot in a frame.
   *
   * @param shots at least one
   */
  public static Picture of(List<LineShot> shots, MmRect frame) {
    LinePicture plot = new LinePicture(shots, frame);
    plot.draw();
    String words =
        "Impact across the line against distance, %d shots. %s"
            .formatted(shots.size(), LineVerdict.of(shots));
    return new Picture(frame, words, plot.shapes);
  }

  private double farthestMetres() {
    return shots.stream().mapToDouble(s -> metres(s.distance())).max().orElseThrow();
  }

  private static double metres(Distance distance) {
    return distance.millimetres() / 1000;
  }

  private void draw() {
    shapes.add(
        new Shape.Line(
            new MmPoint(zero.x(), plot.y()),
            new MmPoint(zero.x(), plot.bottom() - 6),
            0.5,
            Tone.FAINT,
            Stroke.WHOLE));
    distances();
    Drift.of(shots).ifPresent(this::fitted);
    for (LineShot shot : shots) {
      MmPoint at =
          new MmPoint(
              zero.x() + shot.rightMm() * perMm, zero.y() + metres(shot.distance()) * perMetre);
      shapes.add(new Shape.Disc(at, 0.9, Tone.INK));
    }
    shapes.add(new Shape.Outline(plot, 0.3));
    UnitSystem units =
        shots.get(0).distance().unit() == Unit.YARD ? UnitSystem.INCHES : UnitSystem.METRIC;
    shapes.addAll(ScaleBar.fit(units, perMm, plot.width()).in(plot));
  }

  private void fitted(Drift fit) {
    double far = farthestMetres();
    shapes.add(
        new Shape.Inside(
            plot,
            List.of(
                new Shape.Line(
                    new MmPoint(zero.x() + fit.at(0) * perMm, zero.y()),
                    new MmPoint(zero.x() + fit.at(far) * perMm, zero.y() + far * perMetre),
                    0.4,
                    Tone.INK,
                    Stroke.DASHED))));
  }

  /** The distances that were shot from; those too close to the last one written are left out. */
  private void distances() {
    double lowest = Double.NEGATIVE_INFINITY;
    List<Distance> distances =
        shots.stream()
            .map(LineShot::distance)
            .distinct()
            .sorted(Comparator.comparingDouble(Distance::millimetres))
            .toList();
    for (Distance distance : distances) {
      double y = zero.y() + metres(distance) * perMetre;
      if (y - lowest >= 3) {
        MmPoint end = new MmPoint(all.x() + MARGIN - 1.5, y + 0.9);
        shapes.add(new Shape.Words(distance.toString(), end, SMALL, Side.LEFT_OF));
        lowest = y;
      }
    }
  }
}
