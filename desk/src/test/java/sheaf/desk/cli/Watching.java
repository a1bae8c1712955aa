package sheaf.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** {@code sheaf watch} in a process of its own, until it is ended. */
final class Watching {

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(60);

  private final Process process;
  private final Path out;
  private final Path err;

  private Watching(Process process, Path out, Path err) {
    this.process = process;
    this.out = out;
    this.err = err;
  }

  /** Starts it over files of {@link sheaf.desk.Scanned}. */
  static Watching begin(Path home, Path in) throws IOException {
    Path out = Files.createTempFile(in.getParent(), "out", ".txt");
    Path err = Files.createTempFile(in.getParent(), "err", ".txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KilledCommand.class.getName(),
                home.toString(),
                "watch",
                in.toString())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    return new Watching(process, out, err);
  }

  /** Waits until it says something. */
  void waitFor(String words) throws Exception {
    long until = System.nanoTime() + PATIENCE;
    while (!(Files.readString(out) + err()).contains(words)) {
      if (System.nanoTime() > until || !process.isAlive()) {
        throw new AssertionError("never said: " + words + "\n" + Files.readString(out) + err());
      }
      Thread.sleep(50);
    }
  }

  /** What it said beside its results, but for its beginning. */
  String err() throws IOException {
    return Files.readString(err)
        .replace(KilledCommand.READY + "\n", "")
        .replaceFirst("sheaf: Watching .*\n", "");
  }

  void end() throws InterruptedException {
    process.destroy();
    process.waitFor();
  }
}
