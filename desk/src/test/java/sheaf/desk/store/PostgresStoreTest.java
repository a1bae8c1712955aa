package sheaf.desk.store;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;

/** The store on a server. */
@Tag("slow")
class PostgresStoreTest {

  @Nested
  class WithTheFilesInTheDatabase extends StoreContract {
    @Override
    TestDatabase database(Path folder) {
      return PostgresDatabases.with(folder, Optional.empty());
    }
  }

  @Nested
  class WithTheFilesInASharedFolder extends StoreContract {
    @Override
    TestDatabase database(Path folder) {
      return PostgresDatabases.with(folder, Optional.of(folder.resolve("shared")));
    }
  }

  @Nested
  class CopiedWithTheFilesInTheDatabase extends ArchiveContract {
    @Override
    TestDatabase database(Path home) {
      return PostgresDatabases.with(home, Optional.empty());
    }
  }

  @Nested
  class CopiedWithTheFilesInASharedFolder extends ArchiveContract {
    @Override
    TestDatabase database(Path home) {
      return PostgresDatabases.with(home, Optional.of(home.resolve("shared")));
    }
  }
}
