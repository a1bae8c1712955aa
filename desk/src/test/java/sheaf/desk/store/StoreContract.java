package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReasonCode;
import sheaf.core.result.JobSummary;
import sheaf.core.result.Overview;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.store.Scans.State;
import sheaf.desk.store.Store.Filing;

/** What every store does, whichever database is behind it. */
abstract class StoreContract {

  private static final byte[] SCAN = "a scan".getBytes(StandardCharsets.UTF_8);
  private static final byte[] OTHER_SCAN = "another scan".getBytes(StandardCharsets.UTF_8);
  private static final PageReading PAIR = Pages.pair(Pages.JOB, 2, 30, 12);
  private static final String READER = "0.1.0";

  @TempDir Path folder;
  TestDatabase database;
  private Store store;

  /** A new, empty one. */
  abstract TestDatabase database(Path folder);

  @BeforeEach
  void open() {
    if (database == null) {
      database = database(folder);
    }
    store = Store.open(database.place(), Clock.systemUTC());
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void readingsComeBackAfterTheStoreWasClosed() {
    assertThat(store.file("pair.jpg", SCAN, List.of(PAIR), READER)).isEqualTo(Filing.NEW);
    store.close();
    open();
    assertThat(store.readings(Pages.JOB)).containsExactly(PAIR);
    assertThat(store.readings(Pages.OTHER_JOB)).isEmpty();
  }

  @Test
  void fileThatNamesNoJobIsNotKept() {
    assertThat(store.file("bad.jpg", SCAN, List.of(Pages.refused()), READER))
        .isEqualTo(Filing.NOT_KEPT);
    assertThat(count("originals")).isZero();
  }

  @Test
  void refusedPageIsKeptBesideOneThatNamesAJob() {
    store.file("stack.pdf", SCAN, List.of(Pages.refused(), PAIR), READER);
    assertThat(store.readings(Pages.JOB)).containsExactly(PAIR.from("stack.pdf#2"));
    assertThat(count("readings")).isEqualTo(2);
  }

  @Test
  void readingTheSameAgainChangesNothing() {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    var key = store.recordKey(Pages.JOB);
    assertThat(store.file("copy of pair.jpg", SCAN, List.of(PAIR), "0.2.0"))
        .isEqualTo(Filing.KNOWN);
    assertThat(count("readings")).isOne();
    assertThat(count("originals")).isOne();
    assertThat(store.recordKey(Pages.JOB)).isEqualTo(key);
  }

  @Test
  void betterReadingOfAPageIsAddedAndCounts() {
    PageReading doubted = Pages.doubted(PAIR, ReasonCode.HEAD_UNSURE, "Look.");
    store.file("pair.jpg", SCAN, List.of(doubted), READER);
    assertThat(store.file("pair.jpg", SCAN, List.of(PAIR), "0.2.0")).isEqualTo(Filing.NEW);
    assertThat(store.readings(Pages.JOB)).containsExactly(PAIR);
    assertThat(count("readings")).isEqualTo(2);
  }

  @Test
  void laterScanOfASheetCounts() {
    PageReading better = Pages.pair(Pages.JOB, 2, 31, 13);
    store.file("first.jpg", SCAN, List.of(PAIR), READER);
    store.file("second.jpg", OTHER_SCAN, List.of(better), READER);
    assertThat(JobSummary.of(Pages.JOB, store.readings(Pages.JOB)).sheets())
        .containsExactly(better.from("second.jpg"));
  }

  @Test
  void pageThatNowNamesAnotherJobLeavesTheFirst() {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    PageReading moved = Pages.pair(Pages.OTHER_JOB, 2, 30, 12);
    store.file("pair.jpg", SCAN, List.of(moved), "0.2.0");
    assertThat(store.readings(Pages.JOB)).isEmpty();
    assertThat(store.readings(Pages.OTHER_JOB)).hasSize(1);
  }

  @Test
  void everyJobHasASecretOfItsOwn() {
    store.file("a.pdf", SCAN, List.of(PAIR, Pages.pair(Pages.OTHER_JOB, 1, 0, 0)), READER);
    var key = store.recordKey(Pages.JOB).orElseThrow();
    assertThat(key).isNotEqualTo(store.recordKey(Pages.OTHER_JOB).orElseThrow());
    // 128 bits are asked for; 32 symbols of 5 bits are 160.
    assertThat(key.text()).hasSize(32).doesNotContain(Pages.JOB.text());
    assertThat(key.toString()).doesNotContain(key.text());
  }

  @Test
  void nothingIsEverTakenBack() {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    for (String sql :
        List.of(
            "DELETE FROM readings",
            "UPDATE readings SET reading = ''",
            "DELETE FROM originals",
            "UPDATE originals SET name = ''",
            "DELETE FROM revisions",
            "UPDATE revisions SET why = ''",
            "DELETE FROM jobs",
            "UPDATE pages SET number = 7")) {
      assertThatThrownBy(() -> execute(sql))
          .isInstanceOf(SQLException.class)
          .hasMessageContaining("only ever added to");
    }
  }

  @Test
  void everyReadingSaysWhoWhenAndWhy() throws Exception {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    try (Connection connection = database.connect();
        Statement statement = connection.createStatement();
        var row =
            statement.executeQuery(
                "SELECT who, program, why, revisions.made_at = readings.made_at FROM readings"
                    + " JOIN revisions ON revisions.id = revision")) {
      assertThat(row.next()).isTrue();
      assertThat(row.getString(1)).isEqualTo(TestDatabase.WHO);
      assertThat(row.getString(2)).isEqualTo(READER);
      assertThat(row.getString(3)).isEqualTo("read pair.jpg");
      assertThat(row.getBoolean(4)).isTrue();
      assertThat(row.next()).isFalse();
    }
  }

  @Test
  void whatAddsNothingLeavesNoRevision() {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    assertThat(count("revisions")).isOne();
  }

  @Test
  void failureMidwayChangesNothing() throws Exception {
    database.refuseASecondReading();
    PageReading other = Pages.pair(Pages.OTHER_JOB, 1, 0, 0);
    assertThatThrownBy(() -> store.file("a.pdf", SCAN, List.of(PAIR, other), READER))
        .hasMessageContaining("cannot be used");
    for (String table : List.of("originals", "jobs", "pages", "readings")) {
      assertThat(count(table)).as(table).isZero();
    }
    database.refuseNoLonger();
    assertThat(store.file("a.pdf", SCAN, List.of(PAIR, other), READER)).isEqualTo(Filing.NEW);
  }

  @Test
  void scanWaitsUntilItIsReadAndIsReadOnce() {
    Scans scans = store.scans();
    assertThat(scans.arrive("a.png", Scanned.sheets(1, 2), READER)).isEqualTo(State.WAITING);
    assertThat(scans.waiting()).isOne();
    Scans.Filed filed = scans.readNext(READER, Scanned::pages).orElseThrow();
    assertThat(filed.state()).isEqualTo(State.DONE);
    assertThat(filed.isNew()).isTrue();
    assertThat(scans.waiting()).isZero();
    assertThat(scans.readNext(READER, Scanned::pages)).isEmpty();
    assertThat(scans.arrive("b.png", Scanned.sheets(1, 2), READER)).isEqualTo(State.DONE);
    assertThat(store.readings(Pages.JOB))
        .extracting(PageReading::source)
        .containsExactly("a.png#1", "a.png#2");
  }

  @Test
  void scanIsReadAgainByAnotherVersion() {
    store.scans().arrive("a.png", Scanned.sheets(0), READER);
    store.scans().readNext(READER, Scanned::pages);
    assertThat(store.scans().arrive("a.png", Scanned.sheets(0), "0.2.0")).isEqualTo(State.WAITING);
    Scans.Filed filed = store.scans().readNext("0.2.0", Scanned::pages).orElseThrow();
    assertThat(filed.state()).isEqualTo(State.DOUBT);
    assertThat(filed.isNew()).isFalse();
  }

  @Test
  void pageOfAFileThatGrewIsKnownByItsSheet() {
    store.scans().arrive("a.png", Scanned.sheets(1), READER);
    store.scans().readNext(READER, Scanned::pages);
    store.scans().arrive("a.png", Scanned.sheets(1, 2), READER);
    store.scans().readNext(READER, Scanned::pages);
    assertThat(count("readings")).isEqualTo(2);
    assertThat(store.readings(Pages.JOB))
        .extracting(PageReading::source)
        .containsExactly("a.png", "a.png#2");
  }

  @Test
  void scanAtWhichAReaderFailsWaitsForAnother() {
    store.scans().arrive("a.png", Scanned.sheets(1), READER);
    assertThatReadingFails();
    assertThat(store.scans().readNext(READER, Scanned::pages)).isPresent();
    assertThat(store.readings(Pages.JOB)).hasSize(1);
  }

  private void assertThatReadingFails() {
    Scans.Reader failing =
        (name, content) -> {
          throw new IllegalStateException("out of luck");
        };
    assertThatThrownBy(() -> store.scans().readNext(READER, failing)).hasMessage("out of luck");
  }

  /** One that brings every reader down must not keep all others from being read. */
  @Test
  void scanAtWhichEveryReaderFailsIsLeftToAPerson() {
    store.scans().arrive("a.png", Scanned.sheets(1), READER);
    for (int i = 0; i < Scans.MOST_TRIES; i++) {
      assertThatReadingFails();
    }
    Scans.Filed filed = store.scans().readNext(READER, Scanned::pages).orElseThrow();
    assertThat(filed.state()).isEqualTo(State.DOUBT);
    assertThat(filed.pages().get(0).reasons().get(0).code()).isEqualTo(ReasonCode.READER_FAULT);
  }

  @Test
  void severalReadersShareWhatWaitsAndNoneIsReadTwice() throws Exception {
    for (int i = 1; i <= 40; i++) {
      store.scans().arrive(i + ".png", Scanned.sheets(i), READER);
    }
    List<String> read = new CopyOnWriteArrayList<>();
    List<Thread> readers = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Thread reader = new Thread(() -> readAll(read));
      reader.start();
      readers.add(reader);
    }
    for (Thread reader : readers) {
      reader.join();
    }
    assertThat(read).hasSize(40).doesNotHaveDuplicates();
    assertThat(store.readings(Pages.JOB)).hasSize(40);
  }

  private void readAll(List<String> read) {
    Scans.Reader reader =
        (name, content) -> {
          read.add(name);
          return Scanned.pages(name, content);
        };
    try (Store mine = Store.open(database.place(), Clock.systemUTC())) {
      while (mine.scans().readNext(READER, reader).isPresent()) {
        // Until nothing waits.
        continue;
      }
    }
  }

  @Test
  void jobIsFoundByWhatIsKnownOfIt() {
    store.file("pair.jpg", SCAN, List.of(PAIR), READER);
    String id = Pages.JOB.spoken();
    assertThat(found()).containsExactly(Pages.JOB);
    assertThat(found(id)).containsExactly(Pages.JOB);
    assertThat(found(Pages.JOB.text().toLowerCase(Locale.ROOT))).containsExactly(Pages.JOB);
    assertThat(found(id.substring(2, 6), "sheets")).containsExactly(Pages.JOB);
    assertThat(found("%")).isEmpty();
    assertThat(found("_")).isEmpty();
    assertThat(found(id, "elsewhere")).isEmpty();
  }

  private List<JobId> found(String... words) {
    return store.find(List.of(words), false, 10).stream().map(Overview::job).toList();
  }

  @Test
  void overviewTellsWhatIsToBeDoneNext() {
    store.printed(sheets(2, 3), Optional.empty(), READER);
    store.file("2.jpg", SCAN, List.of(PAIR), READER);
    assertThat(overview().state()).isEqualTo(Overview.State.SHEETS);
    assertThat(overview().missing()).containsExactly(3);
    PageReading third = Pages.pair(Pages.JOB, 3, 1, 1);
    store.file(
        "3.jpg",
        OTHER_SCAN,
        List.of(Pages.doubted(third, ReasonCode.HEAD_UNSURE, "Look.")),
        READER);
    assertThat(overview().state()).isEqualTo(Overview.State.DOUBTS);
    assertThat(overview().doubts()).isOne();
    store.file("3.jpg", OTHER_SCAN, List.of(third), READER);
    assertThat(overview().state()).isEqualTo(Overview.State.CARD);
    store.cardMade(Pages.JOB, READER);
    assertThat(overview().state()).isEqualTo(Overview.State.DONE);
    assertThat(store.find(List.of(), true, 10)).isEmpty();
    store.file("2b.jpg", new byte[] {2}, List.of(Pages.pair(Pages.JOB, 2, 31, 12)), READER);
    assertThat(overview().state()).isEqualTo(Overview.State.CARD);
  }

  private Overview overview() {
    return store.find(List.of(), false, 10).get(0);
  }

  private static List<SheetCode> sheets(int... numbers) {
    return Arrays.stream(numbers)
        .mapToObj(number -> Pages.pair(Pages.JOB, number, 0, 0).sheet().orElseThrow())
        .toList();
  }

  @Test
  void visitsOfABowAreKnownFromAnyOfThem() {
    store.file("a.jpg", SCAN, List.of(PAIR), READER);
    store.file("b.jpg", OTHER_SCAN, List.of(Pages.pair(Pages.OTHER_JOB, 1, 0, 0)), READER);
    store.visits(Pages.OTHER_JOB, Optional.of(Pages.JOB), READER);
    for (JobId one : List.of(Pages.JOB, Pages.OTHER_JOB)) {
      BowVisits bow = BowVisits.of(one, store, store.job(one).orElseThrow());
      assertThat(bow.visits())
          .extracting(visit -> visit.job())
          .containsExactly(Pages.JOB, Pages.OTHER_JOB);
    }
    store.visits(Pages.OTHER_JOB, Optional.empty(), READER);
    assertThat(store.before(Pages.OTHER_JOB)).isEmpty();
    assertThat(store.after(Pages.JOB)).isEmpty();
  }

  @Test
  void twoStoresWriteAtOnce() throws Exception {
    Set<Thread> desks = new HashSet<>();
    List<String> faults = new CopyOnWriteArrayList<>();
    for (int desk = 0; desk < 4; desk++) {
      int first = desk * 20;
      Thread thread = new Thread(() -> fileTwenty(first));
      thread.setUncaughtExceptionHandler((t, e) -> faults.add(e.toString()));
      thread.start();
      desks.add(thread);
    }
    for (Thread desk : desks) {
      desk.join();
    }
    assertThat(faults).isEmpty();
    assertThat(store.readings(Pages.JOB)).hasSize(80);
  }

  private void fileTwenty(int first) {
    for (int i = first; i < first + 20; i++) {
      // A store each time, as each command opens its own.
      try (Store desk = Store.open(database.place(), Clock.systemUTC())) {
        byte[] scan = ("scan " + i).getBytes(StandardCharsets.UTF_8);
        desk.file("scan.jpg", scan, List.of(Pages.pair(Pages.JOB, i + 1, i, 0)), READER);
      }
    }
  }

  private int count(String table) {
    try (Connection connection = database.connect();
        Statement statement = connection.createStatement();
        var row = statement.executeQuery("SELECT count(*) FROM " + table)) {
      row.next();
      return row.getInt(1);
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = database.connect();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
