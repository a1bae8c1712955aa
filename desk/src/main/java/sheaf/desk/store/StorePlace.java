package sheaf.desk.store;

import java.nio.file.Path;
import java.util.Optional;
import sheaf.desk.home.HomeFolder;

/**
 * Where a store is.
 *
 * @param home the folder that it lies in, unless a server has it
 * @param address of a PostgreSQL database; empty for a file in the home folder
 * @param originals folder of the files that were read; empty for the usual place: in the home
 *     folder, or in the PostgreSQL database itself
 * @param who works with it: written beside all that is added
 */
public record StorePlace(
    HomeFolder home, Optional<String> address, Optional<Path> originals, String who) {

  /** The store in a home folder, of this computer's user. */
  public static StorePlace in(HomeFolder home) {
    return new StorePlace(
        home, Optional.empty(), Optional.empty(), System.getProperty("user.name", "unknown"));
  }

  /**
   * Checks an address; throws, saying what is wrong in words that go behind "the store".
   *
   * @param typed such as {@code jdbc:postgresql://server/sheaf}
   */
  public static String address(String typed) {
    return new PostgresServer(typed, Optional.empty()).address();
  }

  /** An address without anything secret. */
  public static String spoken(String address) {
    return new PostgresServer(address, Optional.empty()).name();
  }

  /** What is behind it. */
  Engine engine() {
    return address
        .<Engine>map(to -> new PostgresServer(to, originals))
        .orElseGet(() -> new SqliteFile(home.database(), originals.orElse(home.originals())));
  }
}
