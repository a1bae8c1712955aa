package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongFunction;

/** Does the same for many seeds, several at a time. */
public final class Workers {

  private Workers() {}

  /** What comes of each seed, in the order of the seeds. */
  public static <T> List<T> each(long first, long last, int threads, LongFunction<T> work)
      throws ExecutionException, InterruptedException {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<T>> pending = new ArrayList<>();
      for (long seed = first; seed <= last; seed++) {
        long own = seed;
        pending.add(workers.submit(() -> work.apply(own)));
      }
      List<T> done = new ArrayList<>();
      for (Future<T> one : pending) {
        done.add(one.get());
      }
      return done;
    } finally {
      workers.shutdown();
    }
  }
}
