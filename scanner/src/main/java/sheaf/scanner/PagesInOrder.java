package sheaf.scanner;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Reads pages on all processors and hands them over in order.
 *
 * <p>As many pages are in memory as there are processors, and as many again may wait, read, for an
 * earlier one: memory does not grow with the number of pages.
 */
final class PagesInOrder {

  private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();

  private static final int AHEAD = 2 * PROCESSORS;

  private static final long IDLE_SECONDS = 2;

  /** All files share it, so that no more pages are in work than there are processors. */
  private static final ExecutorService WORKERS = workers();

  private PagesInOrder() {}

  private static ExecutorService workers() {
    ThreadPoolExecutor workers =
        new ThreadPoolExecutor(
            PROCESSORS,
            PROCESSORS,
            IDLE_SECONDS,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            work -> {
              Thread thread = new Thread(work, "reads pages");
              thread.setDaemon(true);
              return thread;
            });
    workers.allowCoreThreadTimeOut(true);
    return workers;
  }

  /**
   * Reads so many pages.
   *
   * @param read reads the page of a number, counted from 0; safe to use from several threads
   * @param pages takes each, in order, on the caller's thread
   */
  static void read(int count, IntFunction<ReadPage> read, Consumer<ReadPage> pages) {
    Deque<Future<ReadPage>> pending = new ArrayDeque<>();
    AtomicBoolean wanted = new AtomicBoolean(true);
    try {
      int next = 0;
      while (next < count || !pending.isEmpty()) {
        while (next < count && pending.size() < AHEAD) {
          int page = next++;
          pending.add(WORKERS.submit(() -> wanted.get() ? read.apply(page) : null));
        }
        pages.accept(result(pending.peek()));
        pending.remove();
      }
    } finally {
      wanted.set(false);
      waitFor(pending);
    }
  }

  private static ReadPage result(Future<ReadPage> page) {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return page.get();
        } catch (InterruptedException e) {
          // The file must stay open until its pages are done; who interrupts learns of it then.
          interrupted = true;
        } catch (ExecutionException e) {
          throw unchecked(e.getCause());
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static RuntimeException unchecked(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
  }

  /** Waits for pages in work, since they look at the file; those not begun are left out. */
  private static void waitFor(Deque<Future<ReadPage>> pending) {
    for (Future<ReadPage> page : pending) {
      try {
        page.get();
      } catch (ExecutionException e) {
        // Nobody waits for this page any more, however it ended.
        continue;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }
}
