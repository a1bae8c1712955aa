package sheaf.desk.profile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sheaf.core.measure.Unit;

/**
 * The measures of the bench cards that a bow may drift in between two visits: those of a compound,
 * then what recurves have besides, then what crossbows have besides; at last the tear, which may be
 * so long rather than drift so far.
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
  SPEED("3 ft/s"),
  /** String to inside of loop. */
  LOOP_LENGTH("1/16 in"),
  /** The peep's hole: another peep rather than a drift. */
  PEEP_SIZE("1/64 in"),
  /** Nocking point to nose button. */
  NOSE_BUTTON_HEIGHT("1/16 in"),
  /** How long before full draw a falling rest starts. */
  REST_DROP("1/4 in"),
  /** Gap of the second cam stop when the first touches. */
  CAM_GAP("1/32 in"),
  /** String to upper limb, at the riser. */
  TILLER_TOP("1/16 in"),
  /** String to lower limb, at the riser. */
  TILLER_BOTTOM("1/16 in"),
  /** On the fingers of a recurve's archer, or of a crossbow. */
  DRAW_WEIGHT("2 lb"),
  /** In from softest. */
  PLUNGER_STIFFNESS("0.25 turns"),
  /** Tip out of the riser. */
  PLUNGER_REACH("1/32 in"),
  /** Blade to plunger hole. */
  CLICKER("1/16 in"),
  /** End to end. */
  STRING_LENGTH("1/8 in"),
  /** Between two nocking points. */
  NOCKING_GAP("1/32 in"),
  /** String at rest to pin. */
  SIGHT_EXTENSION("1/8 in"),
  /** String at rest to latch. */
  POWER_STROKE("1/8 in"),
  /** To release, mean of three. */
  TRIGGER_PULL("0.5 lb"),
  /** First touch to release. */
  TRIGGER_TRAVEL("1/32 in"),
  /** Latch to left axle, cocked. */
  STRING_LEFT("1/16 in"),
  /** Latch to right axle, cocked. */
  STRING_RIGHT("1/16 in"),
  /** End to end, at rest. */
  CABLE_LENGTH("1/8 in"),
  /** Of the centre serving. */
  SERVING_LENGTH("1/4 in"),
  /** String over the rail, at rest. */
  RAIL_CLEARANCE("1/32 in"),
  /** Of a tear through paper: up to this it is told as small, and many shops leave it as it is. */
  TEAR("1/4 in");

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
