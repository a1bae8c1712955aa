package sheaf.desk.profile;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Finds the settings of a profile that mean nothing, since a slip must not pass for a setting. */
final class UnknownKeys {

  private final TomlParseResult toml;
  private final List<Problem> problems = new ArrayList<>();

  private UnknownKeys(TomlParseResult toml) {
    this.toml = toml;
  }

  /** A problem for each of them. */
  static List<Problem> in(TomlParseResult toml) {
    UnknownKeys unknown = new UnknownKeys(toml);
    toml.keySet().stream()
        .filter(first -> !first.startsWith(TomlText.BROKEN_HEADING))
        .forEach(unknown::look);
    return unknown.problems;
  }

  private void look(String first) {
    boolean heading = toml.get(List.of(first)) instanceof TomlTable;
    if (KnownKeys.headings().contains(first)) {
      if (heading) {
        lookUnder(first);
      } else {
        complain(
            "%1$s is a heading: write [%1$s] on a line of its own and its settings below."
                .formatted(first),
            first);
      }
    } else if (!KnownKeys.all().contains(first)) {
      complain(heading ? KnownKeys.headingComplaint(first) : KnownKeys.complaint(first), first);
    }
  }

  private void lookUnder(String heading) {
    for (String key : ((TomlTable) toml.get(List.of(heading))).keySet()) {
      String name = heading + "." + key;
      if (!KnownKeys.all().contains(name)) {
        complain(KnownKeys.complaint(name), heading, key);
      }
    }
  }

  private void complain(String sentence, String... path) {
    problems.add(new Problem(toml.inputPositionOf(List.of(path)).line(), sentence));
  }
}
