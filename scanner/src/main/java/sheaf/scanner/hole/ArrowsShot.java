package sheaf.scanner.hole;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Zone;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;

/**
 * What is ticked of the arrows that were shot at a sheet.
 *
 * @param field arrows with field points, where a sheet compares heads; empty when left blank or
 *     unsure
 * @param broadheads the same
 * @param all of both heads; empty unless the sheet tells
 * @param byZone the same for each zone whose arrows are ticked, by its number
 * @param head on all of them, where a sheet asks for one; empty when left blank or unsure
 */
public record ArrowsShot(
    OptionalInt field,
    OptionalInt broadheads,
    OptionalInt all,
    Map<Integer, Integer> byZone,
    Optional<Head> head) {

  private static final String ARROWS = "arrows_";

  /** Copies the counts. */
  public ArrowsShot {
    byZone = Map.copyOf(byZone);
  }

  /** Takes the counts from the fields read. */
  public static ArrowsShot of(List<FieldReading> fields, Layout layout) {
    OptionalInt field = count(fields, Head.FIELD.label());
    OptionalInt broadheads = count(fields, Head.BROADHEAD.label());
    Map<Integer, Integer> byZone = new TreeMap<>();
    for (Zone zone : layout.zones()) {
      count(fields, String.valueOf(zone.number()))
          .ifPresent(arrows -> byZone.put(zone.number(), arrows));
    }
    OptionalInt all =
        field.isPresent() && broadheads.isPresent()
            ? OptionalInt.of(field.getAsInt() + broadheads.getAsInt())
            : count(fields, "shot");
    return new ArrowsShot(field, broadheads, all, byZone, Head.ticked(fields));
  }

  private static OptionalInt count(List<FieldReading> fields, String of) {
    return fields.stream()
        .filter(field -> field.key().equals(ARROWS + of) && field.value().isPresent())
        .mapToInt(field -> (int) Math.round(field.value().getAsDouble()))
        .findFirst();
  }

  /** Of one head. */
  public OptionalInt of(Head head) {
    return head == Head.FIELD ? field : broadheads;
  }

  /** At one zone; empty when it was left blank or is unsure. */
  OptionalInt at(Zone zone) {
    Integer arrows = byZone.get(zone.number());
    return arrows == null ? OptionalInt.empty() : OptionalInt.of(arrows);
  }

  /** How many of both heads there must be, where both are ticked. */
  OptionalInt compared() {
    return field.isPresent() && broadheads.isPresent() ? all : OptionalInt.empty();
  }
}
