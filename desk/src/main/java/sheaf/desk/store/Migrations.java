package sheaf.desk.store;

import java.sql.SQLException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/**
 * Brings the tables up to date by the scripts {@code V1__….sql}, {@code V2__….sql} and so on, of
 * which each database has its own in a folder beside this class.
 *
 * <p>Loading Flyway takes as long as reading a page, so that callers look at the store's version
 * first and come here only where it is not {@link #VERSION}.
 */
final class Migrations {

  /** The version of the tables that this program knows: the number of the last script. */
  static final int VERSION = 5;

  /** Names what was done so far; a name of our own keeps apart from other programs that do so. */
  static final String HISTORY = "sheaf_history";

  /** Held, since a logger that nobody holds forgets its level. */
  private static final Logger TALK = Logger.getLogger("org.flywaydb");

  private Migrations() {}

  /**
   * Runs what has not been run yet. Several processes may do so at a time where the database can
   * keep them apart.
   *
   * @param source of connections
   * @param folder of the scripts: {@code sqlite} or {@code postgresql}
   * @param made version of tables that were made before there were scripts; 0 where none were
   */
  static void run(DataSource source, String folder, int made) throws SQLException {
    TALK.setLevel(Level.WARNING);
    try {
      Flyway.configure()
          .dataSource(source)
          .locations("classpath:sheaf/desk/store/" + folder)
          .table(HISTORY)
          .baselineOnMigrate(made > 0)
          .baselineVersion(String.valueOf(made))
          .load()
          .migrate();
    } catch (FlywayException e) {
      throw cause(e);
    }
  }

  private static SQLException cause(FlywayException e) {
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException sql) {
        return sql;
      }
    }
    if (e.getMessage().contains("non-empty schema")) {
      return new SQLException(
          "it has tables of another program: give Sheaf a database of its own", e);
    }
    String why = e.getMessage().lines().findFirst().orElse("no reason given");
    return new SQLException("its tables could not be brought up to date: " + why, e);
  }
}
