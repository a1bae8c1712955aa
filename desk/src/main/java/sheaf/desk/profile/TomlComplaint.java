package sheaf.desk.profile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in a shop's words what is wrong with a line that is no TOML. */
final class TomlComplaint {

  private static final Pattern TWICE =
      Pattern.compile("(\\S+) .*previously defined at line (\\d+).*");

  private static final Pattern SETTING = Pattern.compile("([\\w.-]+)\\s*=\\s*(.*)");

  private TomlComplaint() {}

  /**
   * A sentence.
   *
   * @param line the broken line
   * @param parser what the parser says of it
   */
  static String about(String line, String parser) {
    String text = line.strip();
    Matcher twice = TWICE.matcher(parser);
    if (twice.matches()) {
      return text.startsWith("[")
          ? text + " stands twice, first in line " + twice.group(2) + ": put all below one of them."
          : twice.group(1) + " is set twice, first in line " + twice.group(2) + ": keep one.";
    }
    if (text.startsWith("[")) {
      return "A heading must look like [shop] and stand alone, not '" + text + "'.";
    }
    Matcher setting = SETTING.matcher(text);
    return setting.matches()
        ? aboutValue(setting.group(1), setting.group(2), parser)
        : "Expected name = value, not '" + text + "'.";
  }

  private static String aboutValue(String name, String value, String parser) {
    if (value.isEmpty() || value.startsWith("#")) {
      return name + " has no value: write one behind the =, or put a # before the line.";
    }
    if (parser.contains("escape")) {
      return name + " has a \\ in its value, which has a meaning of its own: write / instead.";
    }
    if (value.startsWith("[")) {
      return name + " must be a list such as [10, 20, 30], with commas, not '" + value + "'.";
    }
    char first = value.charAt(0);
    if (first == '"' || first == '\'') {
      return value.indexOf(first, 1) < 0
          ? name + " has a quotation mark that is never closed: end the value with " + first + "."
          : name + " has more behind its value than belongs there: " + value + ".";
    }
    String words = value.replaceAll("\\s*#.*", "").replaceAll("[\"“”„]", "");
    return "Words must stand in quotation marks: " + name + " = \"" + words + "\".";
  }
}
