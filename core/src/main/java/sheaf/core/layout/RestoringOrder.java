package sheaf.core.layout;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The order in which a bow is restored, since what comes later follows from what comes earlier:
 * string and cable lengths, then the bow's own geometry, timing, draw, and at last what the arrow
 * and the eye need (common practice, no published source).
 */
public final class RestoringOrder {

  private static final List<String> ORDER =
      List.of(
          "string_length",
          "cable_length",
          "strands",
          "string_twists",
          "axle_to_axle",
          "brace_height",
          "limb_bolt_turns",
          "tiller_top",
          "tiller_bottom",
          "cam_stops",
          "cam_gap",
          "draw_length",
          "power_stroke",
          "peak_weight",
          "draw_weight",
          "holding_weight",
          "bow_plus_loop",
          "loop_length",
          "nocking_gap",
          "centre_shot",
          "plunger_reach",
          "plunger_stiffness",
          "nocking_height",
          "rest_drop",
          "clicker",
          "peep_height",
          "peep_size",
          "nose_button_height",
          "sight_extension",
          "sight_scale",
          "arrow_mass",
          "speed");

  private RestoringOrder() {}

  /** Where a measure comes, from 0; what has no place in the order comes last. */
  public static int place(String key) {
    int place = ORDER.indexOf(key);
    return place < 0 ? ORDER.size() : place;
  }

  /** The number from 1 that each row of a bow's return card bears, front and back together. */
  static Map<String, Integer> numbers(BowType bow, UnitSystem units) {
    List<String> ordered =
        Stream.of(CardFront.of(bow, units).rows(), CardBack.of(bow, units).rows())
            .flatMap(List::stream)
            .map(CardRow::key)
            .filter(ORDER::contains)
            .sorted(Comparator.comparingInt(RestoringOrder::place))
            .toList();
    Map<String, Integer> numbers = new LinkedHashMap<>();
    ordered.forEach(key -> numbers.put(key, numbers.size() + 1));
    return numbers;
  }

  /** Rows in the order in which they are restored. */
  static List<CardRow> sorted(List<CardRow> rows) {
    return rows.stream().sorted(Comparator.comparingInt(row -> place(row.key()))).toList();
  }
}
