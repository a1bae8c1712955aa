package sheaf.desk.demo;

import java.nio.file.Path;
import sheaf.desk.home.HomeFolder;

/**
 * Where the demo puts what it makes.
 *
 * @param path of the folder
 */
public record DemoFolder(Path path) {

  /** Blank papers for one bow. */
  public Path pack() {
    return path.resolve("pack.pdf");
  }

  /** The sample scans. */
  public Path scans() {
    return path.resolve("scans");
  }

  /** A picture of each sheet with what was found on it. */
  public Path proofs() {
    return path.resolve("proofs");
  }

  /** The finished card. */
  public Path card() {
    return path.resolve("card.pdf");
  }

  /** A store of the demo's own, so that the user's stays as it is. */
  public HomeFolder home() {
    return new HomeFolder(path.resolve("home"));
  }
}
