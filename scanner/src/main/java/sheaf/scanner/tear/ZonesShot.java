package sheaf.scanner.tear;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Zone;
import sheaf.core.reading.FieldReading;

/**
 * Zones that were shot at as far as ticks tell: what was changed before a shot is ticked for it.
 *
 * @param ticked their numbers
 */
record ZonesShot(Set<Integer> ticked) {

  private static final String CHANGED = "changed_";

  /** Copies the numbers. */
  ZonesShot {
    ticked = Set.copyOf(ticked);
  }

  static ZonesShot of(List<FieldReading> ticks, Layout layout) {
    return new ZonesShot(
        layout.zones().stream()
            .map(Zone::number)
            .filter(zone -> ticks.stream().anyMatch(tick -> isFilled(tick, CHANGED + zone)))
            .collect(Collectors.toSet()));
  }

  private static boolean isFilled(FieldReading tick, String key) {
    return tick.key().equals(key) && tick.state() != FieldReading.State.BLANK;
  }

  boolean says(Zone zone) {
    return ticked.contains(zone.number());
  }
}
