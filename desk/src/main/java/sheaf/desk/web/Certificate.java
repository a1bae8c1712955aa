package sheaf.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import sheaf.desk.outcome.Trouble;

/** What a server shows to prove its name, and encrypts with. */
public final class Certificate {

  private Certificate() {}

  /**
   * Reads a certificate with its key.
   *
   * @param file as PKCS #12
   * @param password of it; may be empty
   * @throws Trouble a misuse when it is none, or the password is another
   */
  public static SSLContext read(Path file, String password) {
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore keys = KeyStore.getInstance("PKCS12");
      keys.load(in, password.toCharArray());
      KeyManagerFactory managers =
          KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
      managers.init(keys, password.toCharArray());
      SSLContext context = SSLContext.getInstance("TLS");
      context.init(managers.getKeyManagers(), null, null);
      return context;
    } catch (IOException | GeneralSecurityException e) {
      throw Trouble.misuse(
          "%s is no PKCS #12 file with a certificate and its key, or SHEAF_CERTIFICATE_PASSWORD is not its password."
              .formatted(file));
    }
  }
}
