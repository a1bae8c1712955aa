package sheaf.desk.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import sheaf.core.job.JobId;
import sheaf.desk.outcome.Trouble;

/**
 * Takes an archive into a store. What is there already is left as it is, so that taking in the same
 * again changes nothing, and one that was broken off is simply begun anew.
 */
final class ArchiveImport {

  /** Lines in one transaction, so that others may write in between. */
  private static final int AT_A_TIME = 200;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static final Map<String, ArchiveTable> BY_NAME =
      ArchiveTable.ALL.stream().collect(Collectors.toMap(ArchiveTable::is, Function.identity()));

  private final Session session;
  private final Connection connection;
  private final ArchiveFile archive;
  private final Set<JobId> touched = new LinkedHashSet<>();
  private final Map<JsonNode, Long> revisions = new HashMap<>();
  private int line = 1;
  private int added;

  private ArchiveImport(Session session, ArchiveFile archive) {
    this.session = session;
    this.connection = session.connection();
    this.archive = archive;
  }

  /**
   * Takes all of it in.
   *
   * @return how many rows were added
   * @throws Trouble when it is no archive, or a line makes no sense; what came before it is kept
   */
  static int run(Session session, ArchiveFile archive) {
    ArchiveImport work = new ArchiveImport(session, archive);
    try (BufferedReader lines = archive.lines()) {
      work.head(lines.readLine());
      work.body(lines);
    } catch (IOException e) {
      throw Trouble.cannotRead(archive, e);
    }
    work.overviews();
    return work.added;
  }

  private void head(String text) {
    JsonNode head = text == null ? MAPPER.nullNode() : parse(text);
    if (!Archive.FORMAT.equals(head.path("is").textValue())) {
      throw Trouble.refused(archive + " is no archive of a store.");
    }
    if (head.path("version").intValue() > Archive.VERSION) {
      throw Trouble.refused(archive + " was written by a newer Sheaf: use that one.");
    }
  }

  private void body(BufferedReader lines) throws IOException {
    List<JsonNode> some = some(lines);
    while (!some.isEmpty()) {
      List<JsonNode> now = some;
      session.transaction(
          () -> {
            for (JsonNode one : now) {
              take(one);
            }
            return true;
          });
      some = some(lines);
    }
  }

  private List<JsonNode> some(BufferedReader lines) throws IOException {
    List<JsonNode> some = new ArrayList<>();
    String text = lines.readLine();
    while (text != null) {
      line++;
      some.add(parse(text));
      text = some.size() < AT_A_TIME ? lines.readLine() : null;
    }
    return some;
  }

  private JsonNode parse(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw nonsense("it is no JSON");
    }
  }

  private Trouble nonsense(String why) {
    return Trouble.refused(
        "%s makes no sense in line %d: %s. What came before it was taken in."
            .formatted(archive, line, why));
  }

  private void take(JsonNode one) throws SQLException {
    ArchiveTable table = BY_NAME.get(one.path("is").asText());
    if (table == null) {
      throw nonsense("'" + one.path("is").asText() + "' is unknown");
    }
    Map<String, Object> values = new HashMap<>();
    for (String column : table.columns()) {
      values.put(column, value(table, column, one));
    }
    Optional<Long> revision = revision(one.path("revision"));
    boolean known = isKnown(table, values, revision);
    if (table.is().equals("original")) {
      original(one, known);
      return;
    }
    if (known) {
      return;
    }
    List<Object> row = new ArrayList<>();
    table.columns().forEach(column -> row.add(values.get(column)));
    if (table.isRevised()) {
      row.add(revision.orElse(null));
    }
    Sql.update(connection, table.insert(), row.toArray());
    added++;
    Optional.ofNullable(one.path("job").textValue())
        .or(() -> Optional.ofNullable(table.is().equals("job") ? text(one, "id") : null))
        .flatMap(JobId::parse)
        .ifPresent(touched::add);
  }

  private boolean isKnown(ArchiveTable table, Map<String, Object> values, Optional<Long> revision)
      throws SQLException {
    List<Object> same = new ArrayList<>();
    table.same().forEach(column -> same.add(values.get(column)));
    if (table.byRevision()) {
      same.add(revision.orElse(null));
    }
    return Sql.first(connection, table.find(), row -> true, same.toArray()).isPresent();
  }

  private Object value(ArchiveTable table, String column, JsonNode one) throws SQLException {
    if (column.equals(ArchiveTable.PAGE)) {
      return page(one);
    }
    JsonNode value = one.path(column);
    if (table.json().contains(column)) {
      return value.toString();
    }
    return value.isNumber() ? (Object) value.longValue() : value.textValue();
  }

  private long page(JsonNode one) throws SQLException {
    return Sql.first(
            connection,
            "SELECT id FROM pages WHERE original = ? AND number = ?",
            row -> row.getLong(1),
            text(one, "original"),
            one.path("page").longValue())
        .orElseThrow(() -> nonsense("its page is not there"));
  }

  private String text(JsonNode one, String key) {
    if (!one.path(key).isTextual()) {
      throw nonsense("it has no \"" + key + "\"");
    }
    return one.path(key).textValue();
  }

  /** The number of a revision, which is added unless it is known. */
  private Optional<Long> revision(JsonNode one) throws SQLException {
    if (!one.isObject()) {
      return Optional.empty();
    }
    Long known = revisions.get(one);
    if (known != null) {
      return Optional.of(known);
    }
    Object[] values = {
      text(one, "made_at"), text(one, "who"), text(one, "program"), text(one, "why")
    };
    Optional<Long> there =
        Sql.first(
            connection,
            "SELECT id FROM revisions WHERE made_at = ? AND who = ? AND program = ? AND why = ?",
            row -> row.getLong(1),
            values);
    long id =
        there.isPresent()
            ? there.get()
            : Sql.insert(
                connection,
                "INSERT INTO revisions (made_at, who, program, why) VALUES (?, ?, ?, ?)",
                values);
    revisions.put(one, id);
    return Optional.of(id);
  }

  /** A file that is noted here but gone, or changed, comes back. */
  private void original(JsonNode one, boolean known) throws SQLException {
    String digest = text(one, "sha256");
    if (!known) {
      keep(one, digest, content(one, digest));
    } else if (!session.originals().isIntact(digest)) {
      session.originals().restore(digest, content(one, digest));
      added++;
    }
  }

  private byte[] content(JsonNode one, String digest) {
    byte[] content;
    try {
      content =
          archive
              .original(digest)
              .orElseThrow(
                  () ->
                      Trouble.refused(
                          archive
                              + " holds lines without the scans that they speak of: export to a .zip file."));
    } catch (IOException e) {
      throw Trouble.cannotRead(archive, e);
    }
    if (!Originals.digest(content).equals(digest)) {
      throw Trouble.refused(
          archive + " is damaged: the scan " + text(one, "name") + " in it was changed.");
    }
    return content;
  }

  private void keep(JsonNode one, String digest, byte[] content) throws SQLException {
    session.originals().keepBefore(digest, content);
    session.agreeOnOriginals();
    Sql.update(
        connection,
        "INSERT INTO originals (sha256, name, bytes, kept_at) VALUES (?, ?, ?, ?)",
        digest,
        text(one, "name"),
        one.path("bytes").longValue(),
        text(one, "kept_at"));
    session.originals().keepWithin(digest, content);
    if (!session.originals().isIntact(digest)) {
      session.originals().restore(digest, content);
    }
    added++;
  }

  private void overviews() {
    List<JobId> all = new ArrayList<>(touched);
    for (int from = 0; from < all.size(); from += AT_A_TIME) {
      List<JobId> some = all.subList(from, Math.min(all.size(), from + AT_A_TIME));
      session.change(
          "",
          "",
          change -> {
            change.overviews(change.known(some));
            return true;
          });
    }
  }
}
