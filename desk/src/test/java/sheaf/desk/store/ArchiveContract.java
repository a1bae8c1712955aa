package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Said;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.outcome.Trouble;

/** Copies of a whole store, whichever database is behind it. */
abstract class ArchiveContract {

  private static final String READER = "0.1.0";

  @TempDir Path folder;
  private TestDatabase database;

  /** A new, empty one, whose home is in a folder. */
  abstract TestDatabase database(Path home);

  @BeforeEach
  void make() {
    database = database(folder.resolve("first"));
  }

  /** A store with something in every table. */
  private Store filled() {
    Store store = Store.open(database.place(), Clock.systemUTC());
    store.file("a.png", Scanned.sheets(1), Scanned.pages("a.png", Scanned.sheets(1)), READER);
    store.scans().arrive("b.png", Scanned.sheets(2, 0), READER);
    store.scans().readNext(READER, Scanned::pages);
    store.scans().arrive("waits.png", Scanned.sheets(9), READER);
    store.printed(
        List.of(Pages.pair(Pages.JOB, 3, 0, 0).sheet().orElseThrow()), Optional.empty(), READER);
    BowRecord record = record();
    store.importCard("card.pdf", new byte[] {1, 2, 3}, record, READER);
    store.visits(record.last().job(), Optional.of(Pages.JOB), READER);
    store.answer(Pages.JOB, List.of(answer()), READER);
    store.cardMade(Pages.JOB, READER);
    store.newRecordKey(Pages.JOB, READER);
    return store;
  }

  private static Answer answer() {
    Said said =
        new Said.Value(
            "brace_height_left",
            "6 1/2",
            OptionalDouble.of(6.5),
            Optional.of(Unit.INCH),
            Teller.TYPED,
            "");
    return new Answer(
        OptionalInt.empty(),
        said,
        Optional.of("T.S."),
        Instant.parse("2026-09-14T12:00:00Z"),
        Optional.of("measured again"));
  }

  private static BowRecord record() {
    JobSummary summary =
        JobSummary.of(Pages.OTHER_JOB, List.of(Pages.pair(Pages.OTHER_JOB, 1, 12, 7)));
    return RecordOfSheets.of(summary, Optional.of(LocalDate.of(2026, 9, 14)));
  }

  private static String lines(Store store) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    store.archives().writeLines(out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private Path archive(Store store) throws IOException {
    Path file = folder.resolve("archive.zip");
    try (OutputStream out = Files.newOutputStream(file)) {
      store.archives().write(out, files -> {});
    }
    return file;
  }

  @Test
  void storeThatTakesAnArchiveInIsEqualAndDoingItTwiceChangesNothing() throws Exception {
    try (Store store = filled();
        Store other = Store.open(database(folder.resolve("other")).place(), Clock.systemUTC())) {
      Path archive = archive(store);
      assertThat(other.archives().takeIn(archive)).isPositive();
      String once = lines(other);
      assertThat(once).isEqualTo(lines(store));
      assertThat(other.archives().takeIn(archive)).isZero();
      assertThat(lines(other)).isEqualTo(once);
      assertThat(other.job(Pages.JOB)).isEqualTo(store.job(Pages.JOB));
      assertThat(other.find(List.of(), false, 10)).isEqualTo(store.find(List.of(), false, 10));
      assertThat(other.archives().verify(bytes -> {}).faults()).isEmpty();
    }
  }

  /** JSON Schema, draft 2020-12, held against by a general validator. */
  @Test
  void everyLineIsAsThePublishedSchemaSays() throws Exception {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(VersionFlag.V202012)
            .getSchema(Archive.class.getResourceAsStream("archive.schema.json"));
    ObjectMapper mapper = new ObjectMapper();
    try (Store store = filled()) {
      List<String> lines = lines(store).lines().toList();
      assertThat(
              lines.stream().map(line -> line.replaceFirst("\\{\"is\":\"(\\w+).*", "$1")).toList())
          .containsAll(ArchiveTable.ALL.stream().map(ArchiveTable::is).toList());
      for (String line : lines) {
        assertThat(schema.validate(mapper.readTree(line))).as(line).isEmpty();
      }
    }
    assertThat(schema.validate(mapper.readTree("{\"is\":\"song\"}"))).isNotEmpty();
  }

  /** Through a file of the other sort of store, and back. */
  @Test
  void archivesFitEveryDatabase() throws Exception {
    TestDatabase file = SqliteDatabases.in(folder.resolve("file"));
    try (Store store = filled();
        Store between = Store.open(file.place(), Clock.systemUTC());
        Store back = Store.open(database(folder.resolve("back")).place(), Clock.systemUTC())) {
      between.archives().takeIn(archive(store));
      back.archives().takeIn(archive(between));
      assertThat(lines(back)).isEqualTo(lines(store));
    }
  }

  @Test
  void backupTakenWhileOthersWriteRestoresToASoundStore() throws Exception {
    filled().close();
    AtomicBoolean enough = new AtomicBoolean();
    Thread writer = new Thread(() -> writeUntil(enough));
    writer.start();
    Path archive;
    int before;
    try (Store store = Store.open(database.place(), Clock.systemUTC())) {
      while (store.readings(Pages.JOB).size() < 12) {
        Thread.sleep(5);
      }
      before = store.readings(Pages.JOB).size();
      archive = archive(store);
    } finally {
      enough.set(true);
      writer.join();
    }
    StorePlace place = database(folder.resolve("restored")).place();
    Restoring.from(place, archive, false, Clock.systemUTC());
    try (Store restored = Store.open(place, Clock.systemUTC())) {
      assertThat(restored.readings(Pages.JOB)).hasSizeGreaterThanOrEqualTo(before);
      assertThat(restored.archives().verify(bytes -> {}).faults()).isEmpty();
    }
  }

  private void writeUntil(AtomicBoolean enough) {
    try (Store store = Store.open(database.place(), Clock.systemUTC())) {
      for (int number = 10; number < 900 && !enough.get(); number++) {
        byte[] scan = Scanned.sheets(number);
        store.file(number + ".png", scan, Scanned.pages(number + ".png", scan), READER);
      }
    }
  }

  @Test
  void storeThatIsThereIsNotOverwritten() throws Exception {
    try (Store store = filled()) {
      Path archive = archive(store);
      assertThatThrownBy(() -> Restoring.from(database.place(), archive, false, Clock.systemUTC()))
          .isInstanceOf(Trouble.class)
          .hasMessageContaining("already");
    }
  }

  @Test
  void archiveThatWasCutIsRefused() throws Exception {
    Path archive;
    try (Store store = filled()) {
      archive = archive(store);
    }
    byte[] whole = Files.readAllBytes(archive);
    Files.write(archive, Arrays.copyOf(whole, whole.length - 40));
    StorePlace place = database(folder.resolve("restored")).place();
    assertThatThrownBy(() -> Restoring.from(place, archive, false, Clock.systemUTC()))
        .hasMessage(archive + " is damaged: its end is missing or was changed.");
  }

  @Test
  void soundStoreIsFoundSound() throws Exception {
    try (Store store = filled()) {
      Verification found = store.archives().verify(bytes -> {});
      assertThat(found.faults()).isEmpty();
      assertThat(found.files()).isEqualTo(4);
      assertThat(found.readings()).isEqualTo(3);
    }
  }
}
