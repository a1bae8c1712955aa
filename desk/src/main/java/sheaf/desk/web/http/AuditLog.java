package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.YearMonth;
import sheaf.desk.outcome.Trouble;

/**
 * Who did what: a JSON object a line, a file a month. Secrets are never in it: of a record's
 * address only that it was asked for, of a passphrase only whether it was right.
 */
public final class AuditLog {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Path folder;
  private final Clock clock;

  /** A log in a folder, which is made when it is needed. */
  public AuditLog(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /**
   * Writes a line.
   *
   * @param what was done, without any secret
   * @param status that it ended with
   */
  synchronized void write(Request request, String what, int status) {
    ObjectNode line = MAPPER.createObjectNode();
    line.put("at", clock.instant().toString());
    line.put("from", request.address().getHostAddress());
    line.put("who", request.visitor().initials());
    line.put("did", what);
    line.put("status", status);
    Path file = folder.resolve("desk-" + YearMonth.now(clock) + ".jsonl");
    try {
      Files.createDirectories(folder);
      Files.write(
          file,
          (line + "\n").getBytes(UTF_8),
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    }
  }
}
