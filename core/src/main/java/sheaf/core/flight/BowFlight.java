package sheaf.core.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Taken;

/**
 * How a recorded bow's arrow flies: what its mass, shaft and speed come to at some distances.
 *
 * @param set distance that the sight is set for
 * @param rows one for each distance, in the order asked for
 */
public record BowFlight(Distance set, List<Row> rows) {

  private static final double MM = 1000;

  /** No bow shoots so slowly, m/s; such a speed was written wrong. */
  private static final double SLOWEST = 20;

  /** Marks are asked for on cards so many times. */
  private static final int MARKS = 4;

  /**
   * An arrow at a distance.
   *
   * @param distance to the target
   * @param heightMm over the aim with the sight set as it is; negative is low
   * @param dropMm below the line that it left on
   * @param seconds on its way
   * @param feetPerSecond that it still has
   * @param fallDegrees how steeply it comes down, over the horizontal; negative while it rises
   * @param mark of the sight for this distance, where enough marks were shot in
   */
  public record Row(
      Distance distance,
      double heightMm,
      double dropMm,
      double seconds,
      double feetPerSecond,
      double fallDegrees,
      OptionalDouble mark) {}

  /**
   * How the bow is aimed, and in what air.
   *
   * @param eyeMm how far the eye is over the arrow at full draw, zero or more
   * @param set distance that the sight is set for
   * @param air that it is shot in
   * @param eyeToPin from eye to pin at full draw, in units of the sight's scale, for marks from a
   *     single one; empty when it was not measured
   */
  public record Aim(double eyeMm, Distance set, Air air, OptionalDouble eyeToPin) {}

  /** Copies the list. */
  public BowFlight {
    rows = List.copyOf(rows);
  }

  /**
   * The flight of a record's arrow; empty unless mass, shaft and speed were surely measured and it
   * reaches what the sight is set for. Distances that it does not reach are left out.
   */
  public static Optional<BowFlight> of(BowRecord record, Aim aim, List<Distance> distances) {
    return shot(record, aim)
        .filter(shot -> shot.reaches(aim.set().millimetres() / MM))
        .map(shot -> of(shot, marks(record, shot, aim.eyeToPin()), aim.set(), distances));
  }

  private static BowFlight of(
      AimedShot shot, Optional<SightMarks> marks, Distance set, List<Distance> distances) {
    double setMetres = set.millimetres() / MM;
    List<Row> rows = new ArrayList<>();
    for (Distance distance : distances) {
      double metres = distance.millimetres() / MM;
      if (!shot.reaches(metres)) {
        continue;
      }
      Flight.Place place = shot.flight().at(shot.speed(), shot.angleFor(metres), metres);
      rows.add(
          new Row(
              distance,
              shot.heightAt(setMetres, metres) * MM,
              shot.dropAt(metres) * MM,
              place.seconds(),
              Unit.METRES_PER_SECOND.convert(place.speed(), Unit.FEET_PER_SECOND),
              -Math.toDegrees(place.angle()),
              marks.map(m -> OptionalDouble.of(m.markFor(metres))).orElse(OptionalDouble.empty())));
    }
    return new BowFlight(set, rows);
  }

  private static Optional<AimedShot> shot(BowRecord record, Aim aim) {
    double mass = record.measured("arrow_mass", Unit.GRAM).orElse(0) / MM;
    double shaft = record.measured("shaft_diameter", Unit.METRE).orElse(0);
    double speed = record.measured("speed", Unit.METRES_PER_SECOND).orElse(0);
    if (mass <= 0 || shaft <= 0 || speed < SLOWEST) {
      return Optional.empty();
    }
    FlyingArrow arrow = new FlyingArrow(mass, shaft, FlyingArrow.USUAL_DRAG);
    return Optional.of(new AimedShot(Flight.of(arrow, aim.air()), speed, aim.eyeMm() / MM));
  }

  private static Optional<SightMarks> marks(
      BowRecord record, AimedShot shot, OptionalDouble eyeToPin) {
    List<ShotIn> shotIn = shotIn(record, shot);
    if (shotIn.stream().mapToDouble(ShotIn::metres).distinct().count() > 1) {
      return Optional.of(SightMarks.through(shot, shotIn));
    }
    return shotIn.isEmpty() || eyeToPin.isEmpty()
        ? Optional.empty()
        : Optional.of(SightMarks.from(shot, shotIn.get(0), eyeToPin.getAsDouble()));
  }

  private static List<ShotIn> shotIn(BowRecord record, AimedShot shot) {
    List<ShotIn> shotIn = new ArrayList<>();
    for (int i = 1; i <= MARKS; i++) {
      double metres = record.measured("sight_distance_" + i, Unit.METRE).orElse(0);
      OptionalDouble mark =
          record.trait("sight_mark_" + i).map(Taken::value).orElse(OptionalDouble.empty());
      if (metres > 0 && mark.isPresent() && shot.reaches(metres)) {
        shotIn.add(new ShotIn(metres, mark.getAsDouble()));
      }
    }
    return shotIn;
  }
}
