package sheaf.samples;

import java.util.List;
import java.util.stream.Collectors;

/** Rows of tables in Markdown. */
final class MarkdownTable {

  private MarkdownTable() {}

  /** The names of the columns. */
  static String head(List<String> columns) {
    return row(columns) + row(columns.stream().map(column -> "---").toList());
  }

  /** A row. */
  static String row(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
  }
}
