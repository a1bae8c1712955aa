package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.desk.Pages;

/** The store in a file. */
class SqliteStoreTest extends StoreContract {

  @Override
  TestDatabase database(Path folder) {
    return SqliteDatabases.in(folder);
  }

  @Test
  void fileIsKeptByteForByteUnderItsDigest() {
    byte[] scan = "a scan".getBytes(StandardCharsets.UTF_8);
    try (Store store = Store.open(database.place(), Clock.systemUTC())) {
      store.file("pair.jpg", scan, List.of(Pages.pair(Pages.JOB, 2, 30, 12)), "0.1.0");
    }
    // printf 'a scan' | sha256sum
    String rest = "26f4973a4d80adb3d956673807597303a694d5124d9c2298b1fa2811810f";
    assertThat(database.place().home().originals().resolve("5b").resolve("b6").resolve(rest))
        .hasBinaryContent(scan);
  }
}
