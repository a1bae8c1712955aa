package sheaf.desk.watch;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Scans;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/**
 * Threads that read what waits, each over a connection of its own, until they are closed. A store
 * that cannot be had for a while is tried again.
 */
public final class Readers implements AutoCloseable {

  /** How often somebody looks whether a scan waits, in milliseconds. */
  private static final long PAUSE = 500;

  /** How long to leave a store alone that was in trouble, in milliseconds. */
  private static final long AFTER_TROUBLE = 5_000;

  private final StorePlace place;
  private final Clock clock;
  private final Scans.Reader reader;
  private final String program;
  private final Teller teller;
  private final AtomicBoolean closed = new AtomicBoolean();
  private final AtomicReference<Throwable> fault = new AtomicReference<>();
  private final AtomicInteger busy = new AtomicInteger();
  private final List<Thread> threads = new ArrayList<>();

  /**
   * Starts them.
   *
   * @param count how many
   * @param place of the store
   * @param reader reads a scan; by several threads at a time
   * @param program that reads: a version
   * @param teller hears of all that is filed
   */
  public Readers(
      int count,
      StorePlace place,
      Clock clock,
      Scans.Reader reader,
      String program,
      Teller teller) {
    this.place = place;
    this.clock = clock;
    this.reader = reader;
    this.program = program;
    this.teller = teller;
    for (int i = 1; i <= count; i++) {
      Thread thread = new Thread(this::readUntilClosed, "reads scans " + i);
      thread.start();
      threads.add(thread);
    }
  }

  /** Whether any scan is being read right now. */
  public boolean areBusy() {
    return busy.get() > 0;
  }

  private void readUntilClosed() {
    while (!closed.get()) {
      try (Store store = Store.open(place, clock)) {
        while (!closed.get()) {
          if (!readNext(store.scans())) {
            pause(PAUSE);
          }
        }
      } catch (Trouble e) {
        teller.say(e.getMessage());
        pause(AFTER_TROUBLE);
      } catch (RuntimeException | Error e) {
        // A fault of our own ends all: what was in hand waits for those that come after.
        fault.compareAndSet(null, e);
        closed.set(true);
      }
    }
  }

  /** Throws what a reader failed at by a fault of its own, if any did. */
  void rethrow() {
    Throwable why = fault.get();
    if (why instanceof Error error) {
      throw error;
    }
    if (why != null) {
      throw (RuntimeException) why;
    }
  }

  private boolean readNext(Scans scans) {
    busy.incrementAndGet();
    try {
      Optional<Scans.Filed> filed = scans.readNext(program, reader);
      filed.ifPresent(teller::filed);
      return filed.isPresent();
    } finally {
      busy.decrementAndGet();
    }
  }

  private void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      closed.set(true);
    }
  }

  /** Lets each finish the scan that it has in hand. */
  @Override
  public void close() {
    closed.set(true);
    for (Thread thread : threads) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
