package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.sql.Connection;
import java.sql.SQLException;
import org.postgresql.PGConnection;
import org.postgresql.largeobject.LargeObject;
import org.postgresql.largeobject.LargeObjectManager;

/**
 * Keeps the files that were read in the database itself, as large objects, whose content is read
 * and written piece by piece (postgresql.org, "Large Objects"). They live in transactions only.
 *
 * @param connection to the server
 */
record LargeObjects(Connection connection) implements Originals {

  @Override
  public String kind() {
    return "database";
  }

  @Override
  public void keepBefore(String digest, byte[] content) {}

  @Override
  public void keepWithin(String digest, byte[] content) throws SQLException {
    if (object(digest) >= 0) {
      return;
    }
    LargeObjectManager objects = objects();
    long id = objects.createLO(LargeObjectManager.READWRITE);
    try (LargeObject object = objects.open(id, LargeObjectManager.WRITE)) {
      // Piece by piece, so that neither side holds all of it once more.
      for (int from = 0; from < content.length; from += BUFFER) {
        object.write(content, from, Math.min(BUFFER, content.length - from));
      }
    }
    Sql.update(connection, "INSERT INTO contents (sha256, object) VALUES (?, ?)", digest, id);
  }

  /** The server guards what is in an object. */
  @Override
  public boolean isIntact(String digest) throws SQLException {
    return object(digest) >= 0;
  }

  @Override
  public void restore(String digest, byte[] content) throws SQLException {
    keepWithin(digest, content);
  }

  @Override
  public InputStream open(String digest) throws IOException, SQLException {
    long id = object(digest);
    if (id < 0) {
      throw new NoSuchFileException(digest);
    }
    return objects().open(id, LargeObjectManager.READ).getInputStream(BUFFER, Long.MAX_VALUE);
  }

  private long object(String digest) throws SQLException {
    return Sql.first(
            connection,
            "SELECT object FROM contents WHERE sha256 = ?",
            row -> row.getLong(1),
            digest)
        .orElse(-1L);
  }

  private LargeObjectManager objects() throws SQLException {
    return connection.unwrap(PGConnection.class).getLargeObjectAPI();
  }
}
