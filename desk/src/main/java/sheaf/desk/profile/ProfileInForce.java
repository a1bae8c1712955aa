package sheaf.desk.profile;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.home.Settings;
import sheaf.desk.outcome.Trouble;

/**
 * The profile that commands go by, and where it comes from.
 *
 * @param profile what holds
 * @param origin what it was read from
 * @param file that it was read from, or would be
 * @param unread older settings that lie there too and say nothing any more
 */
public record ProfileInForce(ShopProfile profile, Origin origin, Path file, Optional<Path> unread) {

  /** What a profile was read from. */
  public enum Origin {
    /** The shop's own profile. */
    PROFILE,
    /** The file of settings that came before profiles. */
    OLDER_SETTINGS,
    /** Nothing: usual values hold. */
    NOTHING
  }

  /**
   * Finds and reads it.
   *
   * @throws Trouble a misuse that says all that is wrong with it
   */
  public static ProfileInForce of(HomeFolder home) {
    Path file = home.profile();
    Path older = home.olderSettings();
    boolean hasOlder = Files.exists(older);
    if (Files.exists(file)) {
      Optional<Path> unread = hasOlder ? Optional.of(older) : Optional.empty();
      return new ProfileInForce(ProfileFile.read(file), Origin.PROFILE, file, unread);
    }
    if (hasOlder) {
      ShopProfile profile = ShopProfile.of(Settings.of(older));
      return new ProfileInForce(profile, Origin.OLDER_SETTINGS, older, Optional.empty());
    }
    return new ProfileInForce(ShopProfile.USUAL, Origin.NOTHING, file, Optional.empty());
  }
}
