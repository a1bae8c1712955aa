package sheaf.desk.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import sheaf.desk.outcome.Trouble;

/**
 * Writes all of a store, as it was at one moment, in a form of its own that every store can take
 * in: a ZIP file with {@code sheaf.jsonl}, one JSON object a line, and the files that were read.
 *
 * <p>The lines are described by the JSON Schema {@code archive.schema.json} beside this class.
 */
final class Archive {

  static final String LINES = "sheaf.jsonl";
  static final String ORIGINALS = "originals/";
  static final String PROFILE = "sheaf.toml";
  static final String FORMAT = "sheaf-archive";

  /** An archive with a higher one is refused. */
  static final int VERSION = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Connection connection;
  private final Originals originals;
  private final IntConsumer progress;
  private int rows;

  private Archive(Connection connection, Originals originals, IntConsumer progress) {
    this.connection = connection;
    this.originals = originals;
    this.progress = progress;
  }

  /**
   * Writes an archive.
   *
   * @param snapshot a connection that sees one moment throughout
   * @param profile of the shop, which goes with it where there is one
   * @param progress hears of how many files were written
   * @return how many files
   */
  static int write(
      Connection snapshot,
      Originals originals,
      Path profile,
      OutputStream out,
      IntConsumer progress)
      throws SQLException, IOException {
    Archive archive = new Archive(snapshot, originals, progress);
    try (ZipOutputStream zip = new ZipOutputStream(new Open(out), StandardCharsets.UTF_8)) {
      zip.putNextEntry(new ZipEntry(LINES));
      archive.lines(zip);
      zip.closeEntry();
      if (Files.exists(profile)) {
        zip.putNextEntry(new ZipEntry(PROFILE));
        Files.copy(profile, zip);
        zip.closeEntry();
      }
      // Scans are compressed already.
      zip.setLevel(Deflater.NO_COMPRESSION);
      return archive.files(zip);
    }
  }

  /**
   * Writes the lines alone.
   *
   * @return how many
   */
  static int writeLines(Connection snapshot, Originals originals, OutputStream out)
      throws SQLException, IOException {
    Archive archive = new Archive(snapshot, originals, files -> {});
    archive.lines(out);
    return archive.rows;
  }

  /** Whoever opened a stream closes it. */
  private static final class Open extends FilterOutputStream {
    Open(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }

  private void lines(OutputStream out) throws SQLException, IOException {
    write(MAPPER.createObjectNode().put("is", FORMAT).put("version", VERSION), out);
    for (ArchiveTable table : ArchiveTable.ALL) {
      IOException[] broken = new IOException[1];
      Sql.each(
          connection,
          table.select(),
          row -> {
            try {
              write(line(table, row), out);
              rows++;
            } catch (IOException e) {
              broken[0] = e;
              throw new SQLException(e);
            }
          });
      if (broken[0] != null) {
        throw broken[0];
      }
    }
  }

  private static void write(JsonNode line, OutputStream out) throws IOException {
    out.write(MAPPER.writeValueAsBytes(line));
    out.write('\n');
  }

  private static ObjectNode line(ArchiveTable table, ResultSet row)
      throws SQLException, IOException {
    ObjectNode line = MAPPER.createObjectNode().put("is", table.is());
    int at = 1;
    for (String column : table.columns()) {
      if (column.equals(ArchiveTable.PAGE)) {
        line.put("original", row.getString(at++)).put("page", row.getInt(at++));
      } else if (table.json().contains(column)) {
        line.set(column, MAPPER.readTree(row.getString(at++)));
      } else {
        put(line, column, row.getObject(at++));
      }
    }
    if (table.isRevised()) {
      line.set("revision", revision(row, at));
    }
    return line;
  }

  private static void put(ObjectNode line, String column, Object value) {
    if (value instanceof Number number) {
      line.put(column, number.longValue());
    } else {
      line.put(column, (String) value);
    }
  }

  /** Null for what was added before revisions were kept. */
  private static JsonNode revision(ResultSet row, int at) throws SQLException {
    if (row.getString(at) == null) {
      return MAPPER.nullNode();
    }
    return MAPPER
        .createObjectNode()
        .put("made_at", row.getString(at))
        .put("who", row.getString(at + 1))
        .put("program", row.getString(at + 2))
        .put("why", row.getString(at + 3));
  }

  private int files(ZipOutputStream zip) throws SQLException, IOException {
    List<String> digests =
        Sql.list(
            connection,
            "SELECT sha256 FROM originals ORDER BY kept_at, sha256",
            r -> r.getString(1));
    int done = 0;
    for (String digest : digests) {
      zip.putNextEntry(new ZipEntry(ORIGINALS + digest));
      try (InputStream in = originals.open(digest)) {
        in.transferTo(zip);
      } catch (NoSuchFileException e) {
        throw Trouble.environment(
            "The scan " + digest + " is gone, so nothing was written: see 'sheaf verify'.");
      }
      zip.closeEntry();
      done++;
      progress.accept(done);
    }
    return done;
  }
}
