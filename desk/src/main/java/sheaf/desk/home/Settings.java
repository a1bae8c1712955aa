package sheaf.desk.home;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;
import sheaf.desk.outcome.Trouble;
import sheaf.forms.Shop;

/**
 * What a shop had set in {@code sheaf.properties}, the file that came before the shop profile. Each
 * is empty where nothing is set.
 *
 * @param recordAddress where the record pages are: {@code record.address}
 * @param shop printed on finished cards: {@code shop.name}
 * @param paper in the printer: {@code paper}
 * @param units asked for on the sheets: {@code units}
 */
public record Settings(
    Optional<RecordAddress> recordAddress,
    Optional<String> shop,
    Optional<Paper> paper,
    Optional<UnitSystem> units) {

  /** Nothing is set. */
  public static final Settings NONE =
      new Settings(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Some editors put it at the beginning of a file. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** What an office prints on. */
  private static final List<Paper> PAPERS = List.of(Paper.LETTER, Paper.A4);

  /**
   * Reads a file of lines {@code name = value}; blank lines and lines that begin with {@code #} say
   * nothing. Nothing is set when there is no such file.
   *
   * @throws Trouble a misuse with a sentence for each line that makes no sense
   */
  public static Settings of(Path file) {
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      return of(lines, file);
    } catch (NoSuchFileException e) {
      return NONE;
    } catch (CharacterCodingException e) {
      throw Trouble.misuse(file + " must be saved as UTF-8 text.");
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private static Settings of(List<String> lines, Path file) {
    Settings settings = NONE;
    List<String> complaints = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      try {
        settings = settings.withLine(lines.get(i).replace(BYTE_ORDER_MARK, "").strip());
      } catch (IllegalArgumentException e) {
        complaints.add(file + ", line " + (i + 1) + ": " + e.getMessage());
      }
    }
    if (!complaints.isEmpty()) {
      throw Trouble.misuse(String.join("\n", complaints));
    }
    return settings;
  }

  /** These settings and what a line says; throws, saying what is wrong in a sentence. */
  private Settings withLine(String line) {
    if (line.isEmpty() || line.startsWith("#")) {
      return this;
    }
    int equals = line.indexOf('=');
    if (equals < 0) {
      throw new IllegalArgumentException("expected name = value, not '" + line + "'.");
    }
    String name = line.substring(0, equals).strip();
    try {
      return with(name, line.substring(equals + 1).strip());
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(name + " " + e.getMessage() + ".", e);
    }
  }

  private Settings with(String name, String value) {
    return switch (name) {
      case "record.address" ->
          new Settings(Optional.of(new RecordAddress(value)), shop, paper, units);
      case "shop.name" -> new Settings(recordAddress, Optional.of(shop(value)), paper, units);
      case "paper" -> new Settings(recordAddress, shop, Optional.of(paper(value)), units);
      case "units" -> new Settings(recordAddress, shop, paper, Optional.of(units(value)));
      default ->
          throw new IllegalArgumentException(
              "is no setting; there are record.address, shop.name, paper and units");
    };
  }

  /** Checks a shop's name; throws, saying what is wrong in words that go behind "the name". */
  private static String shop(String name) {
    return Shop.line(name, Shop.LONGEST_NAME);
  }

  /** A paper by its name in commands. */
  public static Paper paper(String label) {
    return byLabel(PAPERS, Paper::label, label);
  }

  /** Units by their name in commands. */
  public static UnitSystem units(String label) {
    return byLabel(List.of(UnitSystem.values()), UnitSystem::label, label);
  }

  private static <T> T byLabel(List<T> choices, Function<T, String> label, String wanted) {
    return choices.stream()
        .filter(one -> label.apply(one).equalsIgnoreCase(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "must be "
                        + String.join(" or ", choices.stream().map(label).toList())
                        + ", not '"
                        + wanted
                        + "'"));
  }
}
