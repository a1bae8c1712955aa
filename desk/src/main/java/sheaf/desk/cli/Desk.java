package sheaf.desk.cli;

import java.io.InputStream;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Map;
import java.util.function.DoubleFunction;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.intake.FlatSource;
import sheaf.desk.intake.PageSource;
import sheaf.desk.intake.PlaceSource;

/**
 * What the commands need of the world outside.
 *
 * @param console where they write
 * @param environment the process's variables
 * @param clock the time and the date on cards
 * @param random for the names of jobs
 * @param reader makes a reader of pages that takes numbers for read from a sureness on, 0 to 1;
 *     only when one is needed, since that takes a moment
 * @param places cuts places out of sheets for a person to look at
 * @param flat flattens whole sheets for the same
 * @param in what a person types
 */
public record Desk(
    Console console,
    Map<String, String> environment,
    Clock clock,
    SecureRandom random,
    DoubleFunction<PageSource> reader,
    PlaceSource places,
    FlatSource flat,
    InputStream in) {

  /** Who works here: the user's name on this computer. */
  String who() {
    return System.getProperty("user.name", "unknown");
  }

  /** The folder of this user. */
  HomeFolder usersHome() {
    return HomeFolder.ofUser(
        environment, System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
  }
}
