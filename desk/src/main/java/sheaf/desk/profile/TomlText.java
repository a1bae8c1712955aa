package sheaf.desk.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * A text in TOML 1.0 (toml.io) whose broken lines were set aside.
 *
 * @param toml what the other lines say
 * @param lines those lines, with empty ones in place of the broken ones
 * @param problems one for each broken line
 */
record TomlText(TomlParseResult toml, List<String> lines, List<Problem> problems) {

  /** Stands in for a broken heading, so that the settings below it do not move to another. */
  static final String BROKEN_HEADING = "broken-heading-in-line-";

  /** A text with more broken lines than this is no profile at all. */
  private static final int MOST_BROKEN = 10;

  /** A line that begins something new: a setting or a heading. */
  private static final Pattern BEGINNING =
      Pattern.compile("\\s*([\\w.-]+\\s*=.*|\\[\\s*[\\w.-]+\\s*]\\s*(#.*)?)");

  private static final Pattern LIST_BEGINNING = Pattern.compile("\\s*[\\w.-]+\\s*=\\s*\\[.*");

  /** What says nothing. */
  private static final Pattern EMPTY = Pattern.compile("\\s*(#.*)?");

  /** Splits a text into settings; lines may end as on any platform. */
  static TomlText of(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    List<Problem> problems = new ArrayList<>();
    Parsed parsed = parse(lines);
    // The parser skips lines behind an error, so each broken line is taken out before the next try.
    while (parsed.error.isPresent()
        && problems.size() < MOST_BROKEN
        && setAside(lines, parsed.error.get(), problems)) {
      parsed = parse(lines);
    }
    parsed.error.ifPresent(
        next ->
            problems.add(
                new Problem(
                    next.position().line(),
                    "From here on more lines make no sense: is this a shop profile?")));
    return new TomlText(parsed.toml, List.copyOf(lines), List.copyOf(problems));
  }

  /** What lines say, and the first error in them. */
  private record Parsed(TomlParseResult toml, Optional<TomlParseError> error) {}

  /** The parser names most errors, and throws some, like a wrong escape in a key. */
  private static Parsed parse(List<String> lines) {
    try {
      TomlParseResult toml = Toml.parse(String.join("\n", lines));
      return new Parsed(toml, first(toml));
    } catch (TomlParseError e) {
      return new Parsed(Toml.parse(""), Optional.of(e));
    }
  }

  private static Optional<TomlParseError> first(TomlParseResult toml) {
    return toml.errors().stream().min(Comparator.comparingInt(error -> error.position().line()));
  }

  /** Takes what is broken out of the lines; false when nothing is left to take out. */
  private static boolean setAside(
      List<String> lines, TomlParseError error, List<Problem> problems) {
    int at = lastFilled(lines, error.position().line() - 1);
    if (at < 0) {
      return false;
    }
    int list = openList(lines, at);
    if (list >= 0) {
      problems.add(new Problem(list + 1, "The list is never closed: end it with ]."));
      int end = list < at && BEGINNING.matcher(lines.get(at)).matches() ? at : at + 1;
      lines.subList(list, end).replaceAll(line -> "");
      return true;
    }
    String line = lines.get(at);
    problems.add(new Problem(at + 1, TomlComplaint.about(line, error.getMessage())));
    lines.set(at, line.strip().startsWith("[") ? "[" + BROKEN_HEADING + (at + 1) + "]" : "");
    return true;
  }

  private static int lastFilled(List<String> lines, int from) {
    int at = Math.min(from, lines.size() - 1);
    while (at >= 0 && EMPTY.matcher(lines.get(at)).matches()) {
      at--;
    }
    return at;
  }

  /**
   * Where the list begins that is still open where something new begins in a line, or where the
   * text ends with it; below zero when there is none.
   */
  private static int openList(List<String> lines, int at) {
    boolean begins = BEGINNING.matcher(lines.get(at)).matches();
    int above = begins ? openListUpTo(lines, at - 1) : -1;
    boolean textEnds =
        lines.subList(at + 1, lines.size()).stream().allMatch(EMPTY.asMatchPredicate());
    return above < 0 && textEnds ? openListUpTo(lines, at) : above;
  }

  private static int openListUpTo(List<String> lines, int last) {
    for (int i = last; i >= 0; i--) {
      if (LIST_BEGINNING.matcher(lines.get(i)).matches()) {
        String list = String.join("\n", lines.subList(i, last + 1)).replaceAll("#.*", "");
        return count(list, '[') > count(list, ']') ? i : -1;
      }
      if (BEGINNING.matcher(lines.get(i)).matches()) {
        return -1;
      }
    }
    return -1;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }

  /**
   * The line in which a value of a list stands; the parser gives the place where the value before
   * it ends.
   */
  int lineOf(TomlArray list, int index) {
    TomlPosition before = list.inputPositionOf(index);
    int at = before.line() - 1;
    String rest = lines.get(at).substring(Math.min(before.column() - 1, lines.get(at).length()));
    while (EMPTY.matcher(rest).matches() && at + 1 < lines.size()) {
      at++;
      rest = lines.get(at);
    }
    return at + 1;
  }
}
