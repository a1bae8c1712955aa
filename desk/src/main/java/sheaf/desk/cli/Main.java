package sheaf.desk.cli;

import java.security.SecureRandom;
import java.time.Clock;
import sheaf.scanner.FlatPicture;
import sheaf.scanner.PlacePictures;
import sheaf.scanner.SheetReader;

/** Starts the command line. */
public final class Main {

  private Main() {}

  /** Runs one command and ends the process with its exit status. */
  public static void main(String[] args) {
    Console console = Console.ofProcess();
    // What no handler can do anything about, such as too little memory, still ends in a sentence.
    Thread.currentThread()
        .setUncaughtExceptionHandler(
            (thread, error) -> console.say("sheaf: the Java machine gave up: " + error));
    Desk desk =
        new Desk(
            console,
            System.getenv(),
            Clock.systemDefaultZone(),
            new SecureRandom(),
            sure -> new SheetReader(sure)::read,
            PlacePictures::png,
            FlatPicture::jpeg,
            System.in);
    System.exit(Sheaf.run(desk, args));
  }
}
