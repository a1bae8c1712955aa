package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import sheaf.core.energy.BowNumbers;
import sheaf.core.energy.DrawCurve;
import sheaf.core.energy.Pulls;
import sheaf.core.flight.Air;
import sheaf.core.flight.BowFlight;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.record.BowRecord;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.profile.Tolerance;
import sheaf.desk.store.StoredJob;

/** What is computed with besides a job's papers. */
final class ComputeOptions {

  @Option(
      names = "--pulls",
      paramLabel = "LB,LB...",
      converter = PoundsList.class,
      description =
          "The bow's pull on the scale, one every inch from brace height to full draw, in pounds;"
              + " without it, what a force-draw sheet of the job says.")
  private DrawCurve pulls;

  @Option(
      names = "--eye",
      paramLabel = "LENGTH",
      converter = Length.class,
      description =
          "How far the eye is over the arrow at full draw. Default: 4.5 in, common practice.")
  private Tolerance eye = Tolerance.of("4.5 in");

  @Option(
      names = "--sight-set",
      paramLabel = "DISTANCE",
      converter = Positive.class,
      description =
          "What the sight is set for, in yards or metres as the shop's units are. Default: 20.")
  private double sightSet = 20;

  @Option(
      names = "--air",
      paramLabel = "C,HPA,HUMIDITY",
      converter = AirWords.class,
      description =
          "Temperature, pressure at the place itself, and humidity. Default: 15 C at sea level.")
  private Air air = Air.STANDARD;

  @Option(
      names = "--eye-to-pin",
      paramLabel = "NUMBER",
      description =
          "From eye to pin at full draw, in units of the sight's scale: gives marks from a single"
              + " one; negative where numbers fall with distance.")
  private Double eyeToPin;

  /** What a job's measures come to; pulls that were typed count before those of a sheet. */
  BowNumbers numbers(StoredJob stored) {
    return BowNumbers.of(
        stored.record(), pulls != null ? Pulls.of(pulls) : Pulls.of(stored.summary()));
  }

  /** How a record's arrow flies to the shop's distances. */
  Optional<BowFlight> flight(BowRecord record, ShopProfile profile) {
    List<Distance> distances = profile.distances(profile.units());
    BowFlight.Aim aim =
        new BowFlight.Aim(
            eye.in(Unit.MILLIMETRE),
            new Distance(sightSet, distances.get(0).unit()),
            air,
            eyeToPin == null ? OptionalDouble.empty() : OptionalDouble.of(eyeToPin));
    return BowFlight.of(record, aim, distances);
  }

  /** Reads a list of pounds. */
  static final class PoundsList implements ITypeConverter<DrawCurve> {
    @Override
    public DrawCurve convert(String typed) {
      List<DrawCurve.Pull> pulls = new ArrayList<>();
      for (String part : typed.split(",", -1)) {
        if (!part.strip().matches("\\d{1,3}(\\.\\d{1,2})?")) {
          throw new TypeConversionException(
              "'%s' is no list of pounds such as 0,14,29.5,43".formatted(typed));
        }
        pulls.add(new DrawCurve.Pull(pulls.size(), Double.parseDouble(part.strip())));
      }
      if (pulls.size() < 2 || pulls.stream().allMatch(pull -> pull.pounds() == 0)) {
        throw new TypeConversionException("two pulls or more are needed, and not all of them 0");
      }
      return new DrawCurve(pulls);
    }
  }

  /** Reads a distance without its unit. */
  static final class Positive implements ITypeConverter<Double> {
    @Override
    public Double convert(String typed) {
      if (!typed.matches("[1-9]\\d{0,2}(\\.\\d)?")) {
        throw new TypeConversionException("'%s' is no distance such as 35".formatted(typed));
      }
      return Double.valueOf(typed);
    }
  }

  /** Reads a length. */
  static final class Length implements ITypeConverter<Tolerance> {
    @Override
    public Tolerance convert(String typed) {
      try {
        Tolerance length = Tolerance.of(typed);
        if (length.in(Unit.MILLIMETRE) > 300) {
          throw new TypeConversionException("the eye is at most 300 mm over the arrow");
        }
        return length;
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(
            "'" + typed + "' is no length such as \"4.5 in\" or \"115 mm\"");
      }
    }
  }

  /** Reads what the weather is. */
  static final class AirWords implements ITypeConverter<Air> {
    @Override
    public Air convert(String typed) {
      try {
        double[] said = Stream.of(typed.split(",", -1)).mapToDouble(Double::parseDouble).toArray();
        if (said.length == 3) {
          return Air.of(said[0], 100 * said[1], said[2] / 100);
        }
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(
            "'%s' is no air such as 30,850,40: -45 to 60 C, hPa, 0 to 100".formatted(typed));
      }
      throw new TypeConversionException("'%s' is no air such as 30,850,40".formatted(typed));
    }
  }
}
