package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.opencv.core.Point;

/** Holes are drawn with a shaft of 3.2 mm radius at 200, 200. */
class ShaftFitTest {

  private static final int RADIUS = 32;

  @Test
  void theAxisOfAPartlyClosedHoleIsTheCirclesCentreAndNotTheOpeningsCentroid() {
    try (DrawnSurface sheet = partlyClosed()) {
      // A flap closes 27 % of the disc: the rest's centroid lies 7.4 px to the left of the axis.
      ShaftFit.Axis axis = fit(sheet, 192.6, 200).axis(RADIUS);

      assertThat(Math.hypot(axis.x() - 200, axis.y() - 200)).isLessThan(4);
      assertThat(axis.odds()).isPositive();
    }
  }

  @Test
  void theRadiusThatFitsBestIsTheShafts() {
    try (DrawnSurface sheet = partlyClosed()) {
      double[] radii = fit(sheet, 190, 200).radii(24, 44);

      int best = 0;
      for (int i = 1; i < radii.length; i++) {
        best = radii[i] > radii[best] ? i : best;
      }
      assertThat(24 + best).isCloseTo(RADIUS, within(2));
    }
  }

  @Test
  void theLessOfTheRimIsSeenTheWiderTheSpread() {
    try (DrawnSurface whole = partlyClosed();
        DrawnSurface half = partlyClosed().cover(150, 100, 100, 98)) {
      assertThat(fit(half, 190, 200).axis(RADIUS).spread())
          .isGreaterThan(fit(whole, 190, 200).axis(RADIUS).spread());
    }
  }

  @Test
  void slitsDrawTheAxisToWhereTheyPoint() {
    try (DrawnSurface sheet = partlyClosed()) {
      ShaftFit fit = fit(sheet, 192.6, 200);
      ShaftFit.Axis rim = fit.axis(RADIUS);
      ShaftFit.Axis both =
          fit.axis(RADIUS, List.of(new Heading(300, 200, 0), new Heading(200, 90, Math.PI / 2)));

      assertThat(Math.hypot(both.x() - 200, both.y() - 200))
          .isLessThan(Math.hypot(rim.x() - 200, rim.y() - 200));
      assertThat(both.spread()).isLessThan(rim.spread());
    }
  }

  @Test
  void plainPaperIsNoHole() {
    try (DrawnSurface sheet = new DrawnSurface()) {
      assertThat(fit(sheet, 200, 200).axis(RADIUS).odds()).isNegative();
    }
  }

  @Test
  void aThinLineIsNoHole() {
    try (DrawnSurface sheet = new DrawnSurface().line(150, 180, 260, 215, 0.8)) {
      assertThat(fit(sheet, 200, 196).axis(RADIUS).odds()).isNegative();
    }
  }

  /** A part on the right is closed by a flap whose fold is a faint crease. */
  private static DrawnSurface partlyClosed() {
    return new DrawnSurface()
        .disc(200, 200, RADIUS, 0.8)
        .area(
            0.03,
            new Point(212, 166),
            new Point(236, 166),
            new Point(236, 234),
            new Point(212, 234))
        .area(0, new Point(234, 160), new Point(240, 160), new Point(240, 240), new Point(234, 240))
        .circle(200, 200, RADIUS, 0.12);
  }

  private static ShaftFit fit(DrawnSurface sheet, double x, double y) {
    int reach = 20;
    RimViews views =
        RimViews.around(sheet.surface(), Seeds.Kind.DARK, x, y, reach + ShaftFit.BEYOND);
    return new ShaftFit(views, new Opening(x, y, 0.5), reach);
  }
}
