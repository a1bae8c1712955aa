package sheaf.desk.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sheaf.desk.home.HomeFolder;

/** Databases in files. */
final class SqliteDatabases {

  private SqliteDatabases() {}

  /** A new one, in a folder. */
  static TestDatabase in(Path folder) {
    HomeFolder home = new HomeFolder(folder.resolve("home"));
    return new TestDatabase(
        new StorePlace(home, Optional.empty(), Optional.empty(), TestDatabase.WHO),
        "jdbc:sqlite:" + home.database(),
        List.of(
            "CREATE TRIGGER t BEFORE INSERT ON readings WHEN (SELECT count(*) FROM readings) = 1"
                + " BEGIN SELECT RAISE(ABORT, 'x'); END"),
        "DROP TRIGGER t");
  }
}
