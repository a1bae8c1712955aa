package sheaf.desk.web.http;

import java.net.InetAddress;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Counts failures, so that nobody tries passphrases or links by the thousand. */
public final class AttemptLimit {

  private static final Duration WINDOW = Duration.ofMinutes(5);

  /** More addresses than a shop's network has; the oldest are forgotten beyond. */
  private static final int MOST_ADDRESSES = 2000;

  private final int fromOne;
  private final int fromAll;
  private final Clock clock;
  private final Map<InetAddress, Deque<Instant>> byAddress = new LinkedHashMap<>();
  private final Deque<Instant> all = new ArrayDeque<>();

  /**
   * A limit.
   *
   * @param fromOne failures in five minutes that one address may have
   * @param fromAll the same for everybody together
   */
  public AttemptLimit(int fromOne, int fromAll, Clock clock) {
    this.fromOne = fromOne;
    this.fromAll = fromAll;
    this.clock = clock;
  }

  /** Throws when an address, or all together, failed too often. */
  public synchronized void check(InetAddress address) {
    forget(all);
    Deque<Instant> own = byAddress.getOrDefault(address, new ArrayDeque<>());
    forget(own);
    if (own.size() >= fromOne || all.size() >= fromAll) {
      throw new Refusal(429, "That was tried too often: wait five minutes, then try again.");
    }
  }

  /** Notes a failure. */
  public synchronized void failed(InetAddress address) {
    Instant now = clock.instant();
    all.add(now);
    byAddress.computeIfAbsent(address, any -> new ArrayDeque<>()).add(now);
    if (byAddress.size() > MOST_ADDRESSES) {
      byAddress.remove(byAddress.keySet().iterator().next());
    }
  }

  private void forget(Deque<Instant> failures) {
    Instant before = clock.instant().minus(WINDOW);
    while (!failures.isEmpty() && failures.peek().isBefore(before)) {
      failures.remove();
    }
  }
}
