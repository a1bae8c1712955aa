package sheaf.core.layout;

import static sheaf.core.layout.CardRow.grains;
import static sheaf.core.layout.CardRow.length;
import static sheaf.core.layout.CardRow.plain;

import java.util.List;
import java.util.Optional;
import sheaf.core.measure.Unit;

/**
 * What the back of a card asks for.
 *
 * @param rows measured as found and as left
 * @param arrow what this bow's arrow is built of, once
 */
record CardBack(List<CardRow> rows, List<CardRow> arrow) {

  static CardBack of(BowType bow, UnitSystem units) {
    return switch (bow) {
      case COMPOUND -> new CardBack(compound(units), arrow(units, "nock groove to end of shaft"));
      case RECURVE -> new CardBack(recurve(units), arrow(units, "nock groove to end of shaft"));
      case CROSSBOW -> new CardBack(crossbow(units), arrow(units, "without nock and point"));
    };
  }

  private static List<CardRow> compound(UnitSystem units) {
    return List.of(
        length(units, "loop_length", "Loop length", "string to inside of loop", 1),
        peep(),
        length(units, "nose_button_height", "Nose button", "nocking point to button", 2),
        length(units, "rest_drop", "Rest drop", "starts before full draw by", 1),
        length(units, "cam_gap", "Cam stop gap", "second stop, when first touches", 1),
        length(units, "tiller_top", "Tiller, top", "string to limb at the riser", 2),
        length(units, "tiller_bottom", "Tiller, bottom", "string to limb at the riser", 2),
        plain("sight_scale", "Sight scale", "where the block is fixed", 2, 1));
  }

  private static List<CardRow> recurve(UnitSystem units) {
    return List.of(
        length(units, "string_length", "String length", "end to end, no twists", 2),
        plain("strands", "Strands", "counted at the loop", 2, 0),
        plain("string_twists", "Twists", "whole turns put in", 2, 0),
        length(units, "nocking_gap", "Nocking points", "between the two", 1),
        length(units, "sight_extension", "Sight extension", "string at rest to pin", 2),
        plain("sight_scale", "Sight scale", "where the block is fixed", 2, 1));
  }

  private static List<CardRow> crossbow(UnitSystem units) {
    return List.of(
        length(units, "string_length", "String length", "end to end, at rest", 2),
        length(units, "cable_length", "Cable length", "end to end, at rest", 2),
        length(units, "serving_length", "Centre serving", "end to end", 2),
        length(units, "rail_clearance", "Rail clearance", "string over the rail, at rest", 1),
        plain("scope_height", "Scope, height", "clicks up from zero", 2, 0),
        plain("scope_side", "Scope, side", "clicks right from zero", 2, 0));
  }

  /** Told in thirty-seconds of an inch in metric shops too, as peeps are sold. */
  private static CardRow peep() {
    Optional<Unit> inch = Optional.of(Unit.INCH);
    return new CardRow.Measure(
        "peep_size", "Peep size", "its hole", inch, NumberForm.thirtySeconds());
  }

  private static List<CardRow> arrow(UnitSystem units, String lengthHint) {
    return List.of(
        diameter(units),
        plain("arrow_spine", "Spine", "as marked on the shaft", 4, 0),
        length(units, "arrow_length", "Length", lengthHint, 2),
        grains("point_mass", "Point", "field point and broadhead"),
        grains("insert_mass", "Insert", "with its weights"),
        length(units, "balance_point", "Balance point", "from the nock's groove", 2),
        new CardRow.Pick("vanes", "Vanes", "Vanes", "how many", List.of("2", "3", "4")),
        new CardRow.Pick(
            "vane_set", "Vanes set", "Vanes set", "", List.of("straight", "offset", "helical")));
  }

  private static CardRow diameter(UnitSystem units) {
    boolean inches = units == UnitSystem.INCHES;
    return new CardRow.Measure(
        "shaft_diameter",
        "Shaft",
        "outside diameter",
        Optional.of(inches ? Unit.INCH : Unit.MILLIMETRE),
        inches ? NumberForm.belowOne(3, "in") : NumberForm.decimal(2, 2, "mm"));
  }
}
