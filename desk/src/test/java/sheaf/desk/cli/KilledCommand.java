package sheaf.desk.cli;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.desk.Scanned;

/** A process that runs one command over files of {@link Scanned}, for tests that kill it. */
final class KilledCommand {

  /** Said when all that any Java program does is done. */
  static final String READY = "ready";

  private KilledCommand() {}

  /**
   * Runs a command.
   *
   * @param args the home folder, then the words of the command
   */
  public static void main(String[] args) {
    System.err.println(READY);
    Desk desk =
        new Desk(
            Console.ofProcess(),
            Map.of("SHEAF_HOME", Path.of(args[0]).toString()),
            Clock.systemUTC(),
            new SecureRandom(),
            sure -> Scanned.READER,
            (file, page, places) -> List.of(),
            (file, page) -> Optional.empty(),
            System.in);
    String[] words = Arrays.copyOfRange(args, 1, args.length);
    System.exit(Sheaf.run(desk, words));
  }
}
