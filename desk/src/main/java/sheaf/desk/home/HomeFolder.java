package sheaf.desk.home;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sheaf.desk.outcome.Trouble;

/**
 * The folder where Sheaf keeps everything.
 *
 * @param path absolute; need not be there yet
 */
public record HomeFolder(Path path) {

  private static final String PRIVATE = "rwx------";

  private static final String VARIABLE = "SHEAF_HOME";

  /** Makes the path absolute. */
  public HomeFolder {
    path = path.toAbsolutePath().normalize();
  }

  /**
   * The folder of this user, by the platform's convention, unless {@code SHEAF_HOME} names another.
   *
   * <p>Linux and others: {@code $XDG_DATA_HOME/sheaf}, by default {@code ~/.local/share/sheaf} (XDG
   * Base Directory Specification; a relative path there is ignored, as it demands). macOS: {@code
   * ~/Library/Application Support/Sheaf}. Windows: {@code %LOCALAPPDATA%\Sheaf}.
   *
   * @param environment the process's variables
   * @param system the name of the operating system as Java gives it
   * @param user the user's own folder
   */
  public static HomeFolder ofUser(Map<String, String> environment, String system, Path user) {
    return variable(environment, VARIABLE)
        .map(Path::of)
        .map(HomeFolder::new)
        .orElseGet(() -> new HomeFolder(byConvention(environment, system, user)));
  }

  private static Path byConvention(Map<String, String> environment, String system, Path user) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return user.resolve("Library").resolve("Application Support").resolve("Sheaf");
    }
    if (name.startsWith("windows")) {
      return variable(environment, "LOCALAPPDATA")
          .map(Path::of)
          .orElse(user.resolve("AppData").resolve("Local"))
          .resolve("Sheaf");
    }
    return variable(environment, "XDG_DATA_HOME")
        .map(Path::of)
        .filter(Path::isAbsolute)
        .orElse(user.resolve(".local").resolve("share"))
        .resolve("sheaf");
  }

  private static Optional<String> variable(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).filter(value -> !value.isEmpty());
  }

  /**
   * Makes the folder unless it is there; where the system knows such rights, only its user may look
   * in, since the keys of customers' records are kept in it.
   *
   * @throws Trouble when it cannot be made
   */
  public void create() {
    try {
      if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.createDirectories(
            path, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(PRIVATE)));
      } else {
        Files.createDirectories(path);
      }
    } catch (IOException e) {
      throw Trouble.cannotWrite(path, e);
    }
  }

  /** The shop profile. */
  public Path profile() {
    return path.resolve("sheaf.toml");
  }

  /** The file of settings that came before the profile. */
  public Path olderSettings() {
    return path.resolve("sheaf.properties");
  }

  /** The database. */
  public Path database() {
    return path.resolve("sheaf.db");
  }

  /** The folder of the files that were read, byte for byte. */
  public Path originals() {
    return path.resolve("originals");
  }
}
