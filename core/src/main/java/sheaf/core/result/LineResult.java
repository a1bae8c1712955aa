package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.Drift;
import sheaf.core.group.LineShot;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.Zone;
import sheaf.core.measure.Distance;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;

/**
 * What one line sheet came to.
 *
 * @param sheet which sheet
 * @param state how sure its reading is
 * @param bands from the top down, each with its distance and shots
 */
public record LineResult(SheetCode sheet, ReadingState state, List<Band> bands) {

  private static final String DISTANCE = "distance_";

  /**
   * One band of the sheet.
   *
   * @param number printed in it, from 1
   * @param distance shot from, printed or written; empty when it was left blank or a person must
   *     read it
   * @param shots in true millimetres on paper from the spot in the band's ring, x right, y down
   */
  public record Band(int number, Optional<Distance> distance, List<MmPoint> shots) {
    /** Copies the list. */
    public Band {
      shots = List.copyOf(shots);
    }
  }

  /** Copies the list. */
  public LineResult {
    bands = List.copyOf(bands);
  }

  /**
   * Computes the result of a line sheet.
   *
   * @throws IllegalArgumentException when the page is no line sheet or was refused
   */
  public static LineResult of(PageReading page) {
    SheetCode sheet =
        page.sheet().orElseThrow(() -> new IllegalArgumentException("the page has no code"));
    Layout layout =
        Layouts.find(sheet.layout())
            .filter(found -> !found.zones().isEmpty() && !found.dots().isEmpty())
            .orElseThrow(() -> new IllegalArgumentException("no line sheet: " + sheet.text()));
    PrintScale scale = page.printScale().orElse(PrintScale.TRUE_SIZE);
    List<Band> bands = new ArrayList<>();
    for (int i = 0; i < layout.zones().size(); i++) {
      Zone zone = layout.zones().get(i);
      MmPoint spot = layout.dots().get(i).centre();
      bands.add(
          new Band(
              zone.number(),
              zone.distance().or(() -> ShotFrom.in(page, DISTANCE + zone.number())),
              shots(page, zone, spot, scale)));
    }
    return new LineResult(sheet, page.state(), bands);
  }

  private static List<MmPoint> shots(PageReading page, Zone zone, MmPoint spot, PrintScale scale) {
    List<MmPoint> shots = new ArrayList<>();
    for (Hole hole : page.holes()) {
      if (hole.zone().orElse(0) == zone.number()) {
        MmVector fromSpot = scale.onPaper(hole.axis().minus(spot));
        shots.add(new MmPoint(fromSpot.dx(), fromSpot.dy()));
      }
    }
    return shots;
  }

  /** The shots whose distance is known, from the top of the sheet down. */
  public List<LineShot> shots() {
    List<LineShot> shots = new ArrayList<>();
    for (Band band : bands) {
      band.distance()
          .ifPresent(from -> band.shots().forEach(shot -> shots.add(new LineShot(from, shot.x()))));
    }
    return shots;
  }

  /** The numbers of the bands that were shot at from a distance that is not known. */
  public List<Integer> withoutDistance() {
    return bands.stream()
        .filter(band -> band.distance().isEmpty() && !band.shots().isEmpty())
        .map(Band::number)
        .toList();
  }

  /** How impact moves with distance; empty unless shots from two known distances were found. */
  public Optional<Drift> drift() {
    return Drift.of(shots());
  }
}
