package sheaf.desk.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import sheaf.desk.intake.PageSource;

/**
 * One command, run in this process.
 *
 * @param status its exit status
 * @param bytes what it wrote to standard output
 * @param err what it wrote to standard error
 */
record CommandRun(int status, byte[] bytes, String err) {

  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-09-14T16:30:00Z"), ZoneOffset.UTC);

  private static final PageSource NOTHING =
      (name, file, proof, pages) -> {
        throw new AssertionError("nothing was to be read");
      };

  static CommandRun of(Path home, PageSource reader, String... words) {
    return reading(home, sure -> reader, words);
  }

  /** A command whose reader depends on how sure a number must be. */
  static CommandRun reading(Path home, DoubleFunction<PageSource> reader, String... words) {
    return typing("", home, reader, words);
  }

  /** A command that reads no file, and to which somebody types something. */
  static CommandRun typing(String typed, Path home, String... words) {
    return typing(typed, home, sure -> NOTHING, words);
  }

  private static CommandRun typing(
      String typed, Path home, DoubleFunction<PageSource> reader, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            80);
    Desk desk =
        new Desk(
            console,
            Map.of("SHEAF_HOME", home.toString()),
            CLOCK,
            new SecureRandom(),
            reader,
            (file, page, places) -> places.stream().map(place -> FakeReader.PICTURE).toList(),
            (file, page) -> Optional.of(FakeReader.PICTURE),
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    int status = Sheaf.run(desk, words);
    return new CommandRun(
        status,
        out.toByteArray(),
        err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n"));
  }

  /** A command that reads nothing. */
  static CommandRun of(Path home, String... words) {
    return of(home, NOTHING, words);
  }

  String out() {
    return new String(bytes, StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  List<String> lines() {
    return out().lines().toList();
  }
}
