package sheaf.desk.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * An empty database for a test.
 *
 * @param place where a store is made in it
 * @param url to look into it past the store
 * @param secondReadingTrigger statements that make a trigger {@code t}, which refuses it
 * @param without the statement that removes it
 */
record TestDatabase(
    StorePlace place, String url, List<String> secondReadingTrigger, String without) {

  static final String WHO = "a tester";

  Connection connect() throws SQLException {
    return DriverManager.getConnection(url);
  }

  /** From now on, only one reading can be added. */
  void refuseASecondReading() throws SQLException {
    for (String sql : secondReadingTrigger) {
      execute(sql);
    }
  }

  void refuseNoLonger() throws SQLException {
    execute(without);
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
