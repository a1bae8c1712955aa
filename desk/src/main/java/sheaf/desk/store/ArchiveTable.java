package sheaf.desk.store;

import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * A table as it stands in an archive: a JSON object for each row, in which other rows are named by
 * what tells them everywhere, not by the numbers that one database gave them.
 *
 * @param is what such an object is, and the name of the table without its last letter
 * @param columns written as they are, in their order
 * @param same those of them that tell whether a row is there already, the revision besides where
 *     {@code byRevision}
 * @param json columns that hold JSON
 * @param byRevision whether rows are told by their revision too
 */
record ArchiveTable(
    String is, List<String> columns, List<String> same, Set<String> json, boolean byRevision) {

  /** Stands for the number of a page; written as its file and its place in it. */
  static final String PAGE = "page";

  /** In an order in which each finds what it points to. */
  static final List<ArchiveTable> ALL =
      List.of(
          plain("original", List.of("sha256", "name", "bytes", "kept_at"), List.of("sha256")),
          plain("job", List.of("id", "record_key", "opened_at"), List.of("id")),
          plain("page", List.of("original", "number"), List.of("original", "number")),
          new ArchiveTable(
              "reading",
              List.of(PAGE, "job", "sheet", "made_at", "made_by", "reading"),
              List.of(PAGE, "made_at", "reading"),
              Set.of("reading"),
              false),
          new ArchiveTable(
              "record",
              List.of("original", "job", "imported_at", "imported_by", "record"),
              List.of("original", "job", "imported_at"),
              Set.of("record"),
              false),
          new ArchiveTable(
              "answer", List.of("job", "answer"), List.of("job", "answer"), Set.of("answer"), true),
          plain("record_key", List.of("job", "record_key"), List.of("record_key")),
          plain("sheet", List.of("job", "number", "layout"), List.of("job", "number", "layout")),
          new ArchiveTable(
              "visit", List.of("job", "earlier"), List.of("job", "earlier"), Set.of(), true),
          new ArchiveTable("card", List.of("job"), List.of("job"), Set.of(), true),
          plain(
              "scan",
              List.of("original", "arrived_at", "state", "tries", "read_by"),
              List.of("original")));

  /** Columns that may be empty. */
  private static final Set<String> NULLABLE = Set.of("earlier");

  private static final String IS_SAME = " IS NOT DISTINCT FROM ?";

  /** Tables whose rows say in which change they were added. */
  private static final Set<String> REVISED =
      Set.of("reading", "record", "answer", "record_key", "sheet", "visit", "card");

  private static ArchiveTable plain(String is, List<String> columns, List<String> same) {
    return new ArchiveTable(is, columns, same, Set.of(), false);
  }

  String table() {
    return is + "s";
  }

  boolean isRevised() {
    return REVISED.contains(is);
  }

  /** All rows in the order in which they were added. */
  String select() {
    StringBuilder sql = new StringBuilder("SELECT ");
    for (String column : columns) {
      sql.append(column.equals(PAGE) ? "p.original, p.number" : "t." + column).append(", ");
    }
    sql.append(isRevised() ? "r.made_at, r.who, r.program, r.why" : "0");
    sql.append(" FROM ").append(table()).append(" AS t");
    if (columns.contains(PAGE)) {
      sql.append(" JOIN pages AS p ON p.id = t.page");
    }
    if (isRevised()) {
      sql.append(" LEFT JOIN revisions AS r ON r.id = t.revision");
    }
    return sql.append(" ORDER BY t.").append(order()).toString();
  }

  private String order() {
    return switch (is) {
      case "original" -> "kept_at, t.sha256";
      case "job" -> "opened_at, t.id";
      case "scan" -> "arrived_at, t.original";
      default -> "id";
    };
  }

  /** Finds a row by what tells it. */
  String find() {
    StringBuilder sql = new StringBuilder("SELECT 1 FROM " + table() + " WHERE ");
    for (String column : same) {
      // The plain comparison is the one that finds by an index in every database.
      sql.append(column).append(NULLABLE.contains(column) ? IS_SAME : " = ?").append(" AND ");
    }
    return sql.append(byRevision ? "revision" + IS_SAME : "1 = 1").toString();
  }

  /** Adds a row. */
  String insert() {
    String names = String.join(", ", columns) + (isRevised() ? ", revision" : "");
    int values = columns.size() + (isRevised() ? 1 : 0);
    return "INSERT INTO "
        + table()
        + " ("
        + names
        + ") VALUES ("
        + String.join(", ", Collections.nCopies(values, "?"))
        + ")";
  }
}
