package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;

/** Copies of a store in a file, and what can befall its files. */
class SqliteArchiveTest extends ArchiveContract {

  @Override
  TestDatabase database(Path home) {
    return SqliteDatabases.in(home);
  }

  private Store one() {
    Store store = Store.open(SqliteDatabases.in(folder.resolve("one")).place(), Clock.systemUTC());
    byte[] scan = Scanned.sheets(1);
    store.file("a.png", scan, Scanned.pages("a.png", scan), "0.1.0");
    return store;
  }

  private Path original() {
    StorePlace place = SqliteDatabases.in(folder.resolve("one")).place();
    return new FolderOfOriginals(place.home().originals())
        .place(Originals.digest(Scanned.sheets(1)));
  }

  /** Whoever adds a table tells archives of it. */
  @Test
  void everyTableIsInArchivesButThoseThatFollowFromTheRest() throws Exception {
    TestDatabase one = SqliteDatabases.in(folder.resolve("one"));
    Store.open(one.place(), Clock.systemUTC()).close();
    List<String> tables;
    try (Connection connection = one.connect()) {
      tables =
          Sql.list(
              connection,
              "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
              row -> row.getString(1));
    }
    List<String> expected =
        new ArrayList<>(ArchiveTable.ALL.stream().map(ArchiveTable::table).toList());
    expected.addAll(List.of("revisions", "overviews", "facts", Migrations.HISTORY));
    assertThat(tables).containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void logWithoutItsDatabaseIsNotTakenForAnothers() throws Exception {
    one().close();
    StorePlace place = SqliteDatabases.in(folder.resolve("one")).place();
    Path file = place.home().database();
    Files.move(file, folder.resolve("elsewhere.db"));
    Files.write(file.resolveSibling("sheaf.db-wal"), new byte[100]);
    assertThatThrownBy(() -> Store.open(place, Clock.systemUTC()))
        .hasMessageStartingWith(file + " is gone but for its log");
  }

  @Test
  void scanThatIsGoneIsNamed() throws Exception {
    try (Store store = one()) {
      Files.delete(original());
      assertThat(store.archives().verify(bytes -> {}).faults())
          .containsExactly(
              "The scan a.png ("
                  + Originals.digest(Scanned.sheets(1)).substring(0, 12)
                  + ") is gone.");
    }
  }

  @Test
  void scanThatWasChangedIsNamed() throws Exception {
    try (Store store = one()) {
      byte[] content = Files.readAllBytes(original());
      content[content.length / 2] ^= 1;
      Files.write(original(), content);
      assertThat(store.archives().verify(bytes -> {}).faults())
          .singleElement()
          .asString()
          .endsWith("is not what was kept.");
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void scanThatIsGoneOrChangedComesBackFromABackup(boolean gone) throws Exception {
    Path archive = folder.resolve("a.zip");
    try (Store store = one()) {
      try (var out = Files.newOutputStream(archive)) {
        store.archives().write(out, files -> {});
      }
      byte[] content = Files.readAllBytes(original());
      content[content.length / 2] ^= 1;
      Files.write(original(), content);
      if (gone) {
        Files.delete(original());
      }
      assertThat(store.archives().takeIn(archive)).isOne();
      assertThat(store.archives().verify(bytes -> {}).faults()).isEmpty();
    }
  }

  /** The end of the file is missing, as after a copy that was broken off. */
  @Test
  void tornDatabaseIsRefusedWithTheWayToRestoreAndRestored() throws Exception {
    Path archive = folder.resolve("a.zip");
    try (Store store = one();
        var out = Files.newOutputStream(archive)) {
      store.archives().write(out, files -> {});
    }
    StorePlace place = SqliteDatabases.in(folder.resolve("one")).place();
    Path file = place.home().database();
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));
    assertThatThrownBy(() -> Store.open(place, Clock.systemUTC()))
        .hasMessage(
            file
                + " is damaged; nothing was changed. Put a backup in its place: sheaf restore FILE.");
    Restoring done = Restoring.from(place, archive, true, Clock.systemUTC());
    assertThat(done.aside().orElseThrow()).hasSize(whole.length / 2);
    try (Store store = Store.open(place, Clock.systemUTC())) {
      assertThat(store.readings(Pages.JOB)).hasSize(1);
      assertThat(store.archives().verify(bytes -> {}).faults()).isEmpty();
    }
  }

  @Test
  void pagesOfTheDatabaseThatAreRubbishAreFound() throws Exception {
    one().close();
    StorePlace place = SqliteDatabases.in(folder.resolve("one")).place();
    Path file = place.home().database();
    byte[] whole = Files.readAllBytes(file);
    // All but the first two pages, which say what the file is.
    Arrays.fill(whole, 4096 * 2, whole.length, (byte) 0xAB);
    Files.write(file, whole);
    assertThatThrownBy(
            () -> {
              try (Store store = Store.open(place, Clock.systemUTC())) {
                List<String> faults = store.archives().verify(bytes -> {}).faults();
                assertThat(faults).isNotEmpty();
                store.readings(Pages.JOB);
              }
            })
        .hasMessageContaining("sheaf restore FILE");
  }
}
