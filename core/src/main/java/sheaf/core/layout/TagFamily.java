package sheaf.core.layout;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The patterns of AprilTag family 36h11, from the table that ships beside this class. */
final class TagFamily {

  private static final int DATA_CELLS = 6;
  private static final long[] PATTERNS = load();

  private TagFamily() {}

  static int size() {
    return PATTERNS.length;
  }

  static boolean white(int tag, int row, int column) {
    int r = row - 1;
    int c = column - 1;
    if (r < 0 || r >= DATA_CELLS || c < 0 || c >= DATA_CELLS) {
      return false;
    }
    int bit = DATA_CELLS * DATA_CELLS - 1 - (r * DATA_CELLS + c);
    return (PATTERNS[tag] >>> bit & 1) == 1;
  }

  private static long[] load() {
    try (InputStream table = TagFamily.class.getResourceAsStream("apriltag-36h11.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(table, StandardCharsets.US_ASCII))) {
      return lines
          .lines()
          .filter(line -> !line.startsWith("#"))
          .mapToLong(line -> Long.parseLong(line, 16))
          .toArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
