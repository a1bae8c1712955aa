package sheaf.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

class SqliteFileTest {

  @TempDir Path folder;

  @Test
  void everyConnectionIsSafeAgainstLossOfPower() throws Exception {
    Path file = folder.resolve("a ?strange#name%.db");
    open(file).close();
    try (Connection connection = open(file)) {
      assertThat(pragma(connection, "journal_mode")).isEqualTo("wal");
      assertThat(pragma(connection, "synchronous")).isEqualTo("2");
      assertThat(pragma(connection, "foreign_keys")).isEqualTo("1");
      assertThat(pragma(connection, "integrity_check")).isEqualTo("ok");
    }
  }

  @Test
  void fileThatIsNoDatabaseIsLeftAsItIs() throws Exception {
    assertLeftAlone(
        Files.writeString(folder.resolve("sheaf.db"), "not a database at all ".repeat(200)),
        "is no database; it was left as it is.");
  }

  @Test
  void emptyFileIsLeftAsItIs() throws Exception {
    assertLeftAlone(
        Files.createFile(folder.resolve("sheaf.db")),
        "is the database of another program; it was left as it is.");
  }

  @Test
  void databaseOfAnotherProgramIsLeftAsItIs() throws Exception {
    Path file = folder.resolve("sheaf.db");
    change(file, "CREATE TABLE songs (title TEXT)");
    assertLeftAlone(file, "is the database of another program; it was left as it is.");
  }

  @Test
  void newerStoreIsRefused() throws Exception {
    Path file = folder.resolve("sheaf.db");
    open(file).close();
    change(file, "PRAGMA user_version = 99");
    assertLeftAlone(
        file,
        "was written by a newer Sheaf (format 99, this one knows %d): use that one."
            .formatted(Migrations.VERSION));
  }

  @Test
  void damagedStoreIsSaidToBeDamaged() throws Exception {
    Path file = folder.resolve("sheaf.db");
    open(file).close();
    byte[] content = Files.readAllBytes(file);
    // The first page says what the file is; all behind it becomes rubbish.
    java.util.Arrays.fill(content, 100, content.length, (byte) 0xAB);
    Files.write(file, content);
    assertLeftAlone(
        file, "is damaged; nothing was changed. Put a backup in its place: sheaf restore FILE.");
  }

  @Test
  void folderWithoutRightsIsSaid() throws Exception {
    Path file = Files.createFile(folder.resolve("file")).resolve("sheaf.db");
    assertThatThrownBy(() -> open(file))
        .isInstanceOf(Trouble.class)
        .hasMessage(file + " cannot be written: a file is in the way where a folder must be.");
  }

  private void assertLeftAlone(Path file, String complaint) throws Exception {
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> open(file))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.ENVIRONMENT))
        .hasMessage(file + " " + complaint);
    assertThat(file).hasBinaryContent(before);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(path -> path.getFileName().toString()).toList())
          .isSubsetOf(List.of("sheaf.db", "creating.lock"));
    }
  }

  private static Connection open(Path file) {
    return new SqliteFile(file, file.resolveSibling("originals")).connect();
  }

  private static void change(Path file, String sql) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static String pragma(Connection connection, String name) throws Exception {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA " + name)) {
      return row.getString(1);
    }
  }
}
