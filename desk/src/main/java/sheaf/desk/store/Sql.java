package sheaf.desk.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs statements whose values are bound in their order. */
final class Sql {

  /** Rows that a server sends at a time where all of a table is gone through. */
  private static final int ROWS_AT_A_TIME = 500;

  /** What a row says. */
  @FunctionalInterface
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  /** Takes a row, and may do more than look at it. */
  @FunctionalInterface
  interface Each {
    void take(ResultSet row) throws SQLException;
  }

  private Sql() {}

  /** Runs a statement that changes something; says how many rows it changed. */
  static int update(Connection connection, String sql, Object... values) throws SQLException {
    try (PreparedStatement statement = prepare(connection, sql, values)) {
      return statement.executeUpdate();
    }
  }

  /** Runs a statement for each row of values. */
  static void updateAll(Connection connection, String sql, List<Object[]> rows)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (Object[] values : rows) {
        bind(statement, values);
        statement.addBatch();
      }
      statement.executeBatch();
    }
  }

  /** Adds a row; the number that the database gave it. */
  static long insert(Connection connection, String sql, Object... values) throws SQLException {
    return first(connection, sql + " RETURNING id", row -> row.getLong(1), values).orElseThrow();
  }

  /** All rows, in their order. */
  static <T> List<T> list(Connection connection, String sql, Row<T> reader, Object... values)
      throws SQLException {
    List<T> all = new ArrayList<>();
    each(connection, sql, row -> all.add(reader.read(row)), values);
    return all;
  }

  /** The first row; empty when there is none. */
  static <T> Optional<T> first(Connection connection, String sql, Row<T> reader, Object... values)
      throws SQLException {
    try (PreparedStatement statement = prepare(connection, sql, values);
        ResultSet row = statement.executeQuery()) {
      return row.next() ? Optional.ofNullable(reader.read(row)) : Optional.empty();
    }
  }

  /** Hands over every row; in a transaction, without ever holding them all. */
  static void each(Connection connection, String sql, Each reader, Object... values)
      throws SQLException {
    try (PreparedStatement statement = prepare(connection, sql, values)) {
      statement.setFetchSize(ROWS_AT_A_TIME);
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          reader.take(row);
        }
      }
    }
  }

  private static PreparedStatement prepare(Connection connection, String sql, Object... values)
      throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    bind(statement, values);
    return statement;
  }

  private static void bind(PreparedStatement statement, Object... values) throws SQLException {
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
  }
}
