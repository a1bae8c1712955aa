package sheaf.desk.watch;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Scans;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/** Looks after folders while others read. */
public final class Watch implements AutoCloseable {

  private final StorePlace place;
  private final Clock clock;
  private final List<ScanFolder> folders;
  private final Readers readers;
  private final Teller teller;
  private Optional<Store> open = Optional.empty();

  /**
   * Gets ready to look.
   *
   * @param folders to look after; may be none
   * @param readers that read what waits
   * @param teller hears of a store that cannot be had
   */
  public Watch(
      StorePlace place, Clock clock, List<ScanFolder> folders, Readers readers, Teller teller) {
    this.place = place;
    this.clock = clock;
    this.folders = List.copyOf(folders);
    this.readers = readers;
    this.teller = teller;
  }

  /**
   * Looks through all folders once. While the store cannot be had, all files stay where they are.
   *
   * @return whether another look may do more: something is being read, or waits, or just came
   */
  public boolean look() {
    readers.rethrow();
    try {
      Scans scans = store().scans();
      boolean more = false;
      for (ScanFolder folder : folders) {
        more |= folder.look(scans);
      }
      return more || scans.waiting() > 0 || readers.areBusy();
    } catch (Trouble e) {
      teller.say(e.getMessage());
      close();
      return true;
    }
  }

  private Store store() {
    if (open.isEmpty()) {
      open = Optional.of(Store.open(place, clock));
    }
    return open.get();
  }

  /** Lets go of the store; another look opens it again. */
  @Override
  public void close() {
    try {
      open.ifPresent(Store::close);
    } catch (Trouble e) {
      teller.say(e.getMessage());
    } finally {
      open = Optional.empty();
    }
  }
}
