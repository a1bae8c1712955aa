package sheaf.desk.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Scans;
import sheaf.desk.store.Store;

/** A folder that a scanner drops files into, looked at once a second by a clock of the test's. */
class ScanFolderTest {

  private static final String PROGRAM = "0.1.0";
  private static final Duration STILL = Duration.ofSeconds(20);

  @TempDir Path folder;
  private Path in;
  private Store store;
  private final Hands clock = new Hands();
  private final List<String> said = new ArrayList<>();
  private ScanFolder scans;

  /** A clock that is set by hand. */
  private static final class Hands extends Clock {
    private Instant now = Instant.parse("2026-09-14T16:30:00Z");

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  @BeforeEach
  void open() {
    in = folder.resolve("in");
    store = Store.open(new HomeFolder(folder.resolve("home")), clock);
    begin();
  }

  @AfterEach
  void close() {
    store.close();
  }

  /** As after a start of the program. */
  private void begin() {
    Teller teller =
        new Teller() {
          @Override
          public void filed(Scans.Filed scan) {}

          @Override
          public void say(String sentence) {
            said.add(sentence);
          }
        };
    scans = new ScanFolder(in, STILL, clock, teller, PROGRAM);
  }

  /** Some seconds go by, with a look in each and everything read that waits. */
  private void seconds(int count) {
    for (int i = 0; i < count; i++) {
      clock.now = clock.now.plusSeconds(1);
      scans.look(store.scans());
      while (store.scans().readNext(PROGRAM, Scanned::pages).isPresent()) {
        // Until nothing waits.
        continue;
      }
    }
  }

  private List<Integer> sheets() {
    return store.readings(Pages.JOB).stream()
        .map(page -> page.sheet().orElseThrow().number())
        .toList();
  }

  private List<String> names(String sub) throws IOException {
    try (Stream<Path> files = Files.list(in.resolve(sub))) {
      return files
          .filter(Files::isRegularFile)
          .map(path -> path.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  private void drop(String name, byte[] content) throws IOException {
    Files.write(in.resolve(name), content);
    Files.setLastModifiedTime(in.resolve(name), FileTime.from(clock.now));
  }

  @Test
  void fileIsReadSoonAndMovedWhenItHasBeenStill() throws Exception {
    drop("a.png", Scanned.sheets(1));
    seconds(3);
    assertThat(sheets()).containsExactly(1);
    assertThat(names("")).containsExactly("a.png");
    seconds(20);
    assertThat(names("")).isEmpty();
    assertThat(names("done")).containsExactly("a.png");
  }

  @Test
  void fileWithAPageThatNeedsALookGoesToDoubt() throws Exception {
    drop("a.png", Scanned.sheets(1, 0));
    seconds(25);
    assertThat(sheets()).containsExactly(1);
    assertThat(names("doubt")).containsExactly("a.png");
  }

  @Test
  void fileThatIsEmptyForAMinuteIsTakenWhenItIsFilled() throws Exception {
    drop("a.png", new byte[0]);
    seconds(90);
    assertThat(said).hasSize(1).first().asString().contains("a.png is not complete yet");
    drop("a.png", Scanned.sheets(1));
    seconds(25);
    assertThat(sheets()).containsExactly(1);
    assertThat(names("done")).containsExactly("a.png");
  }

  @Test
  void fileWhoseEndIsMissingIsLeftAloneHoweverStillItIs() throws Exception {
    byte[] whole = Scanned.sheets(1);
    drop("a.png", Arrays.copyOf(whole, whole.length - 1));
    seconds(600);
    assertThat(sheets()).isEmpty();
    assertThat(names("")).containsExactly("a.png");
    drop("a.png", whole);
    seconds(3);
    assertThat(sheets()).containsExactly(1);
  }

  /** The operator turns the sheet, and the scanner adds a page to the file. */
  @Test
  void fileThatGrowsByAPageIsReadAgainAndNothingIsDoubled() throws Exception {
    drop("a.png", Scanned.sheets(1));
    seconds(10);
    drop("a.png", Scanned.sheets(1, 2));
    seconds(10);
    drop("a.png", Scanned.sheets(1, 2, 3));
    seconds(30);
    assertThat(sheets()).containsExactly(1, 2, 3);
    assertThat(names("done")).containsExactly("a.png");
  }

  @Test
  void fileThatGrowsAfterItWasMovedIsTakenInUnderAnotherName() throws Exception {
    drop("a.png", Scanned.sheets(1));
    seconds(25);
    drop("a.png", Scanned.sheets(1, 2));
    seconds(25);
    assertThat(sheets()).containsExactly(1, 2);
    assertThat(names("done")).containsExactly("a.png", "a~2.png");
  }

  @Test
  void sameFileAgainIsNotReadAgain() throws Exception {
    drop("a.png", Scanned.sheets(1));
    seconds(25);
    drop("b.png", Scanned.sheets(1));
    clock.now = clock.now.plusSeconds(1);
    scans.look(store.scans());
    scans.look(store.scans());
    assertThat(store.scans().waiting()).isZero();
    seconds(25);
    assertThat(sheets()).containsExactly(1);
    assertThat(names("done")).containsExactly("a.png", "b.png");
  }

  @Test
  void programThatStartsAgainGoesOnWhereItWas() throws Exception {
    drop("a.png", Scanned.sheets(1));
    seconds(3);
    begin();
    seconds(25);
    assertThat(sheets()).containsExactly(1);
    assertThat(names("done")).containsExactly("a.png");
  }

  @Test
  void unfinishedFilesOfOtherProgramsAndHiddenOnesAreLeftAlone() throws Exception {
    for (String name : List.of("a.png.part", ".a.png", "~a.png", "a.tmp")) {
      drop(name, Scanned.sheets(1));
    }
    seconds(60);
    assertThat(sheets()).isEmpty();
    assertThat(said).isEmpty();
  }

  @Test
  void whatIsNoScanIsLeftWhereItIsAndSaidOnce() throws Exception {
    drop("list.txt", "a shopping list".getBytes());
    seconds(300);
    assertThat(said)
        .containsExactly(
            in.resolve("list.txt") + " is no JPEG, PNG, TIFF or PDF; it is left where it is.");
    assertThat(names("")).containsExactly("list.txt");
  }

  @Test
  void fileThatGoesAwayIsForgotten() throws Exception {
    drop("a.png", Scanned.sheets(1));
    clock.now = clock.now.plusSeconds(1);
    scans.look(store.scans());
    Files.delete(in.resolve("a.png"));
    seconds(3);
    assertThat(sheets()).isEmpty();
    assertThat(said).isEmpty();
  }
}
