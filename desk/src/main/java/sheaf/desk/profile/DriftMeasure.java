package sheaf.desk.profile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sheaf.core.measure.Unit;

/**
 * The measures of the bench card that a bow may drift in between two visits, in the card's order.
 *
 * <p>The usual tolerances are common practice, no published source; they come from memory and stay
 * above what two people measure differently on one bow on one day.
 */
public enum DriftMeasure {
  /** ATA draw length. */
  DRAW_LENGTH("1/8 in"),
  /** String peg to back of loop, at full draw. */
  BOW_PLUS_LOOP("1/8 in"),
  /** Between the axles, at rest. */
  AXLE_TO_AXLE("1/16 in"),
  /** String to grip pivot, at rest. */
  BRACE_HEIGHT("1/16 in"),
  /** Highest on the scale. */
  PEAK_WEIGHT("1 lb"),
  /** Lowest at full draw. */
  HOLDING_WEIGHT("1 lb"),
  /** Out from bottomed. */
  LIMB_BOLT_TURNS("0.25 turns"),
  /** Riser to middle of shaft. */
  CENTRE_SHOT("1/32 in"),
  /** Above square to the rest. */
  NOCKING_HEIGHT("1/32 in"),
  /** Nocking point to peep. */
  PEEP_HEIGHT("1/16 in"),
  /** Of the complete arrow. */
  ARROW_MASS("5 gr"),
  /** By the chronograph, with the same arrow. */
  SPEED("3 ft/s");

  /**
   * A tolerance beyond this many times the usual one is taken for a slip, such as {@code 116 in}
   * for {@code 1/16 in}, which would keep every drift from being told.
   */
  private static final int MOST_TIMES_USUAL = 16;

  private final Tolerance usual;

  DriftMeasure(String usual) {
    this.usual = Tolerance.of(usual);
  }

  /** The name in the profile, and of its fields on the bench card before {@code _found}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What holds where a shop sets nothing. */
  public Tolerance usual() {
    return usual;
  }

  /**
   * A tolerance for this measure as a shop writes it.
   *
   * @throws IllegalArgumentException when it makes no sense, in words that go behind the key
   */
  Tolerance tolerance(String text) {
    Tolerance written = Tolerance.of(text);
    if (written.unit().dimension() != usual.unit().dimension()) {
      throw new IllegalArgumentException(
          "must be in " + String.join(" or ", units()) + ", not '" + text + "'");
    }
    Tolerance most = new Tolerance(usual.value() * MOST_TIMES_USUAL, usual.unit());
    if (written.in(most.unit()) > most.value()) {
      throw new IllegalArgumentException(
          "may be at most " + most + ", not '" + text + "': such a drift would never be told");
    }
    return written;
  }

  /** Yards and metres are left out: they are for distances. */
  private List<String> units() {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.dimension() == usual.unit().dimension())
        .filter(unit -> unit != Unit.YARD && unit != Unit.METRE)
        .map(Unit::symbol)
        .collect(Collectors.toUnmodifiableList());
  }
}
