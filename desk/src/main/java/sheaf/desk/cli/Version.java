package sheaf.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** This version's number, as the build wrote it down. */
final class Version implements IVersionProvider {

  static String number() {
    try (InputStream file = Version.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(file);
      return properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String[] getVersion() {
    return new String[] {"sheaf " + number()};
  }
}
