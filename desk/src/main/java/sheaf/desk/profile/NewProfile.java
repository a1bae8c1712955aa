package sheaf.desk.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;
import sheaf.desk.file.OutputFile;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.home.Settings;
import sheaf.desk.outcome.Trouble;

/**
 * A profile to fill in, in which every setting is explained and none is set but what was carried
 * over from older settings.
 *
 * @param file that was written
 * @param kept where the file that was there before, or the older settings, lie now
 */
public record NewProfile(Path file, Optional<Path> kept) {

  private static final String TEMPLATE = "new-profile.toml";

  /**
   * Writes it; nothing that a shop had set is lost: a profile that is replaced and older settings
   * that are carried over stay beside it under another name.
   *
   * @param replace whether a profile that is there may be replaced
   * @throws Trouble when one is there and may not be replaced, when older settings make no sense,
   *     or when it cannot be written
   */
  public static NewProfile write(HomeFolder home, boolean replace) {
    Path file = home.profile();
    boolean there = Files.exists(file);
    if (there && !replace) {
      throw Trouble.misuse(
          file + " is there already: edit it, or have a new one in its place with --force.");
    }
    Path before = there ? file : home.olderSettings();
    Settings carried = there ? Settings.NONE : Settings.of(before);
    home.create();
    Optional<Path> kept = Files.exists(before) ? Optional.of(copyOf(before)) : Optional.empty();
    byte[] text = text(carried).getBytes(StandardCharsets.UTF_8);
    OutputFile.write(file, out -> out.write(text));
    if (!there) {
      remove(before);
    }
    return new NewProfile(file, kept);
  }

  private static Path copyOf(Path file) {
    Path copy = file.resolveSibling(file.getFileName() + ".old");
    try {
      return Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw Trouble.cannotWrite(copy, e);
    }
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    }
  }

  /** The text, with the line ends of this platform. */
  private static String text(Settings carried) {
    Map<String, String> values = values(carried);
    List<String> lines =
        template().lines().map(line -> values.getOrDefault(nameOf(line), line)).toList();
    return String.join(System.lineSeparator(), lines) + System.lineSeparator();
  }

  /** Lines to put in place of those of the template, by what they set. */
  private static Map<String, String> values(Settings carried) {
    Map<String, String> values = new LinkedHashMap<>();
    carried.paper().map(Paper::label).ifPresent(value -> put(values, "paper", value));
    carried.units().map(UnitSystem::label).ifPresent(value -> put(values, "units", value));
    carried.shop().ifPresent(value -> put(values, "name", value));
    carried
        .recordAddress()
        .map(RecordAddress::text)
        .ifPresent(value -> put(values, "address", value));
    return values;
  }

  /** Escapes what ends a value in TOML or begins an escape; there are no control characters. */
  private static void put(Map<String, String> values, String name, String value) {
    String escaped = value.replace("\\", "\\\\").replace("\"", "\\\"");
    values.put(name, name + " = \"" + escaped + "\"");
  }

  /** What a line of the template would set: {@code paper} for {@code #paper = "letter"}. */
  private static String nameOf(String line) {
    return line.matches("#\\w+ = .*") ? line.substring(1, line.indexOf(' ')) : "";
  }

  private static String template() {
    try (InputStream in = NewProfile.class.getResourceAsStream(TEMPLATE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
