package sheaf.core.layout;

import static sheaf.core.layout.CardRow.grains;
import static sheaf.core.layout.CardRow.length;
import static sheaf.core.layout.CardRow.speed;
import static sheaf.core.layout.CardRow.turns;
import static sheaf.core.layout.CardRow.weight;

import java.util.List;

/**
 * What the front of a card asks for.
 *
 * @param cautions where the hazard is
 * @param asked two choices beside each other: how the bow is used
 * @param inspected parts to look at, first column then second
 * @param rows measured as found and as left
 */
record CardFront(
    String cautions, List<CardRow.Pick> asked, List<Part> inspected, List<CardRow> rows) {

  private static final String BOW =
      "Draw board and press: the maker's instructions, never with a damaged bow. Never dry fire. "
          + "Anything not sound: do not shoot. Flex carbon shafts and discard damaged ones. Arrow "
          + "mass at least what the bow maker asks. The maker's limits and local rules come first.";

  private static final String CROSSBOW =
      "Never dry fire. Fingers and thumb below the rail. Press and trigger: the maker's "
          + "instructions only. Anything not sound: do not cock it. Bolt mass and nock as the maker "
          + "asks; discard damaged bolts. Point it at the stop only. Local rules come first.";

  /** A part to inspect, by its name in JSON and in print. */
  record Part(String key, String label) {}

  static CardFront of(BowType bow, UnitSystem units) {
    return switch (bow) {
      case COMPOUND -> compound(units);
      case RECURVE -> recurve(units);
      case CROSSBOW -> crossbow(units);
    };
  }

  private static CardFront compound(UnitSystem units) {
    return new CardFront(
        BOW,
        List.of(pick("hand", "Hand", "right", "left"), loosed("release", "fingers")),
        List.of(
            new Part("limbs", "Limbs"),
            new Part("cams", "Cams"),
            new Part("strings", "String, servings"),
            new Part("cables", "Cables"),
            new Part("riser", "Riser"),
            new Part("arrows", "Arrows, flexed")),
        List.of(
            length(units, "draw_length", "Draw length (ATA)", drawHint(units), 2),
            length(units, "bow_plus_loop", "Bow plus loop", "string peg to back of loop", 2),
            length(units, "axle_to_axle", "Axle to axle", "between the axles", 2),
            brace(units),
            weight("peak_weight", "Peak weight", "highest on the scale", 2, 1),
            weight("holding_weight", "Holding weight", "lowest at full draw", 2, 1),
            bolts(),
            length(units, "centre_shot", "Centre shot", "riser to middle of shaft", 1),
            length(units, "nocking_height", "Nocking height", "above square to the rest", 1),
            length(units, "peep_height", "Peep height", "nocking point to peep", 2),
            grains("arrow_mass", "Arrow, total mass", "complete with point"),
            speed(units, "chronograph, this arrow"),
            new CardRow.Pick(
                "cam_stops",
                "Cam stops",
                "Cam stop to touch first",
                "which one touches first",
                List.of("both", "top", "bottom"))));
  }

  private static CardFront recurve(UnitSystem units) {
    return new CardFront(
        BOW,
        List.of(pick("hand", "Hand", "right", "left"), loosed("fingers", "release")),
        List.of(
            new Part("limbs", "Limbs"),
            new Part("limb_tips", "Limb tips"),
            new Part("strings", "String, servings"),
            new Part("riser", "Riser, bolts"),
            new Part("rest", "Rest, plunger"),
            new Part("arrows", "Arrows, flexed")),
        List.of(
            length(units, "draw_length", "Draw length (ATA)", drawHint(units), 2),
            weight("draw_weight", "Draw weight", "on the fingers, this archer", 2, 1),
            brace(units),
            length(units, "tiller_top", "Tiller, top", "string to limb at the riser", 2),
            length(units, "tiller_bottom", "Tiller, bottom", "string to limb at the riser", 2),
            bolts(),
            length(units, "centre_shot", "Centre shot", "riser to middle of shaft", 1),
            length(units, "nocking_height", "Nocking height", "above square to the rest", 1),
            turns("plunger_stiffness", "Plunger, stiffness", "turns in from softest"),
            length(units, "plunger_reach", "Plunger, reach", "tip out of the riser", 1),
            length(units, "clicker", "Clicker", "blade to plunger hole", 1),
            grains("arrow_mass", "Arrow, total mass", "complete with point"),
            speed(units, "chronograph, this arrow")));
  }

  private static CardFront crossbow(UnitSystem units) {
    return new CardFront(
        CROSSBOW,
        List.of(
            pick("cocked_by", "Cocked by", "rope", "crank"),
            pick("nock_type", "Bolt nock", "maker's", "other")),
        List.of(
            new Part("limbs", "Limbs"),
            new Part("cams", "Cams or tips"),
            new Part("strings", "String, servings"),
            new Part("cables", "Cables"),
            new Part("riser", "Riser, rail"),
            new Part("trigger", "Trigger, safety"),
            new Part("dry_fire_catch", "Dry-fire catch"),
            new Part("arrows", "Bolts, flexed")),
        List.of(
            length(units, "axle_to_axle", "Axle to axle", "between the axles", 2),
            brace(units),
            length(units, "power_stroke", "Power stroke", "string at rest to latch", 2),
            weight("draw_weight", "Draw weight", "on the maker's fixture", 3, 0),
            bolts(),
            weight("trigger_pull", "Trigger pull", "to release, mean of three", 1, 1),
            length(units, "trigger_travel", "Trigger travel", "first touch to release", 1),
            length(units, "string_left", "String, left", "latch to axle, cocked", 2),
            length(units, "string_right", "String, right", "latch to axle, cocked", 2),
            grains("arrow_mass", "Bolt, total mass", "complete with point"),
            speed(units, "chronograph, this bolt"),
            new CardRow.Pick(
                "safety",
                "Safety",
                "Safety comes on by itself",
                "comes on by itself when cocked",
                List.of("yes", "no"))));
  }

  private static CardRow.Pick pick(String key, String label, String first, String second) {
    return new CardRow.Pick(key, label, label, "", List.of(first, second));
  }

  private static CardRow.Pick loosed(String first, String second) {
    return pick("loosed_by", "Loosed by", first, second);
  }

  private static CardRow brace(UnitSystem units) {
    return length(units, "brace_height", "Brace height", "string to grip pivot, at rest", 2);
  }

  private static CardRow bolts() {
    return turns("limb_bolt_turns", "Limb-bolt turns", "out from bottomed, both alike");
  }

  /** The ATA adds 1 3/4 in, 44.45 mm, to the true draw length. */
  private static String drawHint(UnitSystem units) {
    return "nock to grip pivot + " + (units == UnitSystem.INCHES ? "1 3/4 in" : "44.5 mm");
  }
}
