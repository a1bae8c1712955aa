package sheaf.scanner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class PagesInOrderTest {

  private static final int PAGES = 200;

  private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();

  private static ReadPage page(int number) {
    Reason reason = Reason.of(ReasonCode.NO_SHEET, "No sheet.");
    return new ReadPage(PageReading.refused("stack#" + number, reason), Optional.empty());
  }

  private static List<String> inOrder(int count) {
    return IntStream.range(0, count).mapToObj(number -> "stack#" + number).toList();
  }

  @Test
  void pagesComeInOrderHoweverLongEachTakes() {
    List<String> sources = new ArrayList<>();
    PagesInOrder.read(
        PAGES,
        number -> {
          long work = new SplittableRandom(number).nextLong(200_000);
          LongWork.spin(work);
          return page(number);
        },
        page -> sources.add(page.reading().source()));

    assertThat(sources).isEqualTo(inOrder(PAGES));
  }

  @Test
  void noMorePagesAreReadAheadThanTwoForEachProcessor() {
    AtomicInteger begun = new AtomicInteger();
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    PagesInOrder.read(
        PAGES,
        number -> {
          most.accumulateAndGet(begun.incrementAndGet() - taken.get(), Math::max);
          return page(number);
        },
        page -> taken.incrementAndGet());

    assertThat(taken).hasValue(PAGES);
    assertThat(most.get()).isBetween(1, 2 * PROCESSORS);
  }

  @Test
  void whatBreaksAPageOffIsToldAfterThePagesBeforeIt() {
    List<String> sources = new ArrayList<>();
    assertThatThrownBy(
            () ->
                PagesInOrder.read(
                    PAGES,
                    number -> {
                      if (number == 7) {
                        throw new IllegalStateException("page 7");
                      }
                      return page(number);
                    },
                    page -> sources.add(page.reading().source())))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("page 7");
    assertThat(sources).isEqualTo(inOrder(7));
  }

  @Test
  void whenPagesAreNoLongerWantedNoneIsInWorkAfterwards() {
    AtomicInteger working = new AtomicInteger();
    assertThatThrownBy(
            () ->
                PagesInOrder.read(
                    PAGES,
                    number -> {
                      working.incrementAndGet();
                      LongWork.spin(100_000);
                      working.decrementAndGet();
                      return page(number);
                    },
                    page -> {
                      throw new IllegalStateException("disk full");
                    }))
        .hasMessage("disk full");
    assertThat(working).hasValue(0);
  }

  /** Work that takes a while without looking at a clock. */
  private static final class LongWork {
    private static volatile long result;

    static void spin(long rounds) {
      long value = rounds;
      for (long i = 0; i < rounds; i++) {
        value = value * 6364136223846793005L + 1442695040888963407L;
      }
      result = value;
    }
  }
}
