package sheaf.desk.cli;

import java.time.Clock;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/** For commands that have nothing to do where nothing was ever kept. */
final class StoreThatIsThere {

  private StoreThatIsThere() {}

  /**
   * Opens it.
   *
   * @throws Trouble a misuse when there is none
   */
  static Store open(StorePlace place, Clock clock) {
    return Store.openExisting(place, clock)
        .orElseThrow(
            () ->
                Trouble.misuse(
                    "There is no store in " + place.home().path() + ": nothing was read yet."));
  }
}
