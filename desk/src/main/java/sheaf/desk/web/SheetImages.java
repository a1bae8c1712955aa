package sheaf.desk.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import sheaf.core.job.JobId;
import sheaf.desk.intake.FlatSource;
import sheaf.desk.store.KeptReading;
import sheaf.desk.store.Store;

/** Flattened sheets; those that were looked at last are kept in memory. */
final class SheetImages {

  /** Bytes of pictures kept: some fifty sheets. */
  private static final long MOST_KEPT = 32_000_000;

  private final FlatSource source;
  private final Semaphore hands;
  private final Map<String, byte[]> kept = new LinkedHashMap<>(16, 0.75f, true);
  private long size;

  /**
   * Pictures by a source.
   *
   * @param hands that decode pictures at a time, shared with the reading of sheets
   */
  SheetImages(FlatSource source, Semaphore hands) {
    this.source = source;
    this.hands = hands;
  }

  /** The reading of a sheet that was made last; empty when there is none. */
  static Optional<KeptReading> last(JobId job, int sheet, Store store) {
    List<KeptReading> readings = store.everyReading(job);
    return readings.stream()
        .filter(
            kept -> kept.read().page().sheet().filter(code -> code.number() == sheet).isPresent())
        .reduce((earlier, later) -> later);
  }

  /** A JPEG of the whole sheet that a reading was made of; empty when its scan is gone. */
  Optional<byte[]> of(KeptReading reading, Store store) {
    String key = reading.original() + "-" + reading.number();
    Optional<byte[]> known = find(key);
    if (known.isPresent()) {
      return known;
    }
    hands.acquireUninterruptibly();
    try {
      return find(key).or(() -> made(key, reading, store));
    } finally {
      hands.release();
    }
  }

  private Optional<byte[]> made(String key, KeptReading reading, Store store) {
    Optional<byte[]> jpeg =
        store.original(reading.original()).flatMap(file -> source.jpeg(file, reading.number()));
    jpeg.ifPresent(picture -> keep(key, picture));
    return jpeg;
  }

  private synchronized Optional<byte[]> find(String key) {
    return Optional.ofNullable(kept.get(key));
  }

  private synchronized void keep(String key, byte[] picture) {
    kept.put(key, picture);
    size += picture.length;
    while (size > MOST_KEPT && kept.size() > 1) {
      String oldest = kept.keySet().iterator().next();
      size -= kept.remove(oldest).length;
    }
  }
}
