package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.util.HexFormat;

/** The files that were read, byte for byte, each under the SHA-256 digest of its content. */
interface Originals {

  /** Names this way of keeping them, the same for all who share a store. */
  String kind();

  /** What is to be done before a file is noted in a transaction. */
  void keepBefore(String digest, byte[] content);

  /**
   * What is to be done in the transaction, when the file was noted. When that is committed, the
   * file is safely kept.
   */
  void keepWithin(String digest, byte[] content) throws SQLException;

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

  /** Computes digests. */
  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
