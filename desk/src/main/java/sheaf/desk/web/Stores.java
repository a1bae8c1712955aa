package sheaf.desk.web;

import java.time.Clock;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.function.Function;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/** Open stores for many threads: each request borrows one for itself. */
final class Stores implements AutoCloseable {

  /** Connections that are kept open while nobody asks; opening one takes a moment. */
  private static final int KEPT = 8;

  private final StorePlace place;
  private final Clock clock;
  private final BlockingDeque<Store> idle = new LinkedBlockingDeque<>(KEPT);

  Stores(StorePlace place, Clock clock) {
    this.place = place;
    this.clock = clock;
  }

  /** Does something with a store that nobody else uses meanwhile. */
  <T> T with(Function<Store, T> work) {
    Store store = idle.pollFirst();
    if (store == null) {
      store = Store.open(place, clock);
    }
    boolean sound = false;
    try {
      T result = work.apply(store);
      sound = true;
      return result;
    } catch (Trouble e) {
      // A sentence about what was asked leaves the connection as it was; one about the machine not.
      sound = e.status() != ExitStatus.ENVIRONMENT;
      throw e;
    } finally {
      if (!sound || !idle.offerFirst(store)) {
        store.close();
      }
    }
  }

  @Override
  public void close() {
    Store store = idle.pollFirst();
    while (store != null) {
      store.close();
      store = idle.pollFirst();
    }
  }
}
