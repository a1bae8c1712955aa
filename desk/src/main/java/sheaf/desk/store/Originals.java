package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.function.IntConsumer;

/** The files that were read, byte for byte, each under the SHA-256 digest of its content. */
interface Originals {

  /** Large enough for the disk to be read in one go, in bytes. */
  int BUFFER = 1 << 20;

  /** Names this way of keeping them, the same for all who share a store. */
  String kind();

  /** What is to be done before a file is noted in a transaction. */
  void keepBefore(String digest, byte[] content);

  /**
   * What is to be done in the transaction, when the file was noted. When that is committed, the
   * file is safely kept.
   */
  void keepWithin(String digest, byte[] content) throws SQLException;

  /** Whether a file that is noted is there, with the content that it was kept with. */
  boolean isIntact(String digest) throws SQLException;

  /** Puts a file that is noted but not intact in its place again, in a transaction. */
  void restore(String digest, byte[] content) throws SQLException;

  /**
   * A file's content; the caller closes it.
   *
   * @throws java.nio.file.NoSuchFileException when it is not there
   */
  InputStream open(String digest) throws IOException, SQLException;

  /** The digest of a file's content, in hexadecimal. */
  static String digest(byte[] content) {
    return HexFormat.of().formatHex(sha256().digest(content));
  }

  /**
   * The digest of what a stream holds, which is read to its end.
   *
   * @param progress hears of the size of each piece
   */
  static String digest(InputStream in, IntConsumer progress) throws IOException {
    MessageDigest sha256 = sha256();
    byte[] buffer = new byte[BUFFER];
    for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
      sha256.update(buffer, 0, got);
      progress.accept(got);
    }
    return HexFormat.of().formatHex(sha256.digest());
  }

  /** Computes digests. */
  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
