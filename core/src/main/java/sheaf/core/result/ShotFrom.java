package sheaf.core.result;

import java.util.Optional;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.PageReading;

/** How far away a sheet was shot from, as far as it has been read. */
final class ShotFrom {

  private static final String TICKED = "distance";
  private static final String WRITTEN = "distance_written";

  private ShotFrom() {}

  /** Ticked, or else written; empty when both are there and differ. */
  static Optional<Distance> of(PageReading page) {
    Optional<Distance> ticked = in(page, TICKED);
    Optional<Distance> written = in(page, WRITTEN);
    boolean differ = ticked.isPresent() && written.isPresent() && !ticked.equals(written);
    return differ ? Optional.empty() : ticked.or(() -> written);
  }

  /** What a field says of a distance; empty when it is blank, not read yet, or zero. */
  static Optional<Distance> in(PageReading page, String key) {
    return page.field(key).filter(field -> field.value().orElse(0) > 0).map(ShotFrom::distance);
  }

  private static Distance distance(FieldReading field) {
    return new Distance(field.value().getAsDouble(), field.unit().orElse(Unit.YARD));
  }
}
