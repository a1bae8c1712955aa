package sheaf.forms;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sheaf.core.measure.Distance;

/**
 * What sheets bear from the start besides their codes.
 *
 * @param last a record's last values for return cards: printed text, unit included, by the key of
 *     the field; a place without a value gets a dash
 * @param filledIn numbers printed into the digit boxes that a person would write them into, by the
 *     key of the field; whole and at least zero, in the unit that the boxes ask for
 */
public record SheetValues(Map<String, String> last, Map<String, Integer> filledIn) {

  /** Nothing is known, and every box is empty. */
  public static final SheetValues NONE = new SheetValues(Map.of(), Map.of());

  /** The key of the first band's distance on a line sheet, without its number. */
  private static final String DISTANCE = "distance_";

  /** Copies both maps. */
  public SheetValues {
    last = Map.copyOf(last);
    filledIn = Map.copyOf(filledIn);
  }

  /** A record's last values alone. */
  public static SheetValues last(Map<String, String> last) {
    return new SheetValues(last, Map.of());
  }

  /**
   * The same, with distances in the boxes of open line sheets.
   *
   * @param distances for the bands from near to far, in whole units of the sheets; a sheet with
   *     fewer bands bears the first ones
   */
  public SheetValues withDistances(List<Distance> distances) {
    Map<String, Integer> numbers = new HashMap<>(filledIn);
    for (int i = 0; i < distances.size(); i++) {
      numbers.put(DISTANCE + (i + 1), (int) distances.get(i).value());
    }
    return new SheetValues(last, numbers);
  }
}
