package sheaf.desk.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HomeFolderTest {

  private static final Path USER = Path.of("/home/t");

  @Test
  void linuxFollowsTheBaseDirectorySpecification() {
    assertThat(home(Map.of(), "Linux")).isEqualTo(Path.of("/home/t/.local/share/sheaf"));
    assertThat(home(Map.of("XDG_DATA_HOME", "/data"), "Linux")).isEqualTo(Path.of("/data/sheaf"));
    // "All paths set in these environment variables must be absolute", says the specification.
    assertThat(home(Map.of("XDG_DATA_HOME", "data"), "Linux"))
        .isEqualTo(Path.of("/home/t/.local/share/sheaf"));
  }

  @Test
  void macAndWindowsHaveTheirOwnPlaces() {
    assertThat(home(Map.of(), "Mac OS X"))
        .isEqualTo(Path.of("/home/t/Library/Application Support/Sheaf"));
    assertThat(home(Map.of("LOCALAPPDATA", "/local"), "Windows 11"))
        .isEqualTo(Path.of("/local/Sheaf"));
    assertThat(home(Map.of(), "Windows 11")).isEqualTo(Path.of("/home/t/AppData/Local/Sheaf"));
  }

  @Test
  void variableOfOurOwnComesFirst() {
    assertThat(home(Map.of("SHEAF_HOME", "/mine", "XDG_DATA_HOME", "/data"), "Linux"))
        .isEqualTo(Path.of("/mine"));
    assertThat(home(Map.of("SHEAF_HOME", ""), "Linux"))
        .isEqualTo(Path.of("/home/t/.local/share/sheaf"));
  }

  @Test
  void othersMayNotLookIn(@TempDir Path folder) throws Exception {
    Assumptions.assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    HomeFolder home = new HomeFolder(folder.resolve("new"));
    home.create();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.path())))
        .isEqualTo("rwx------");
  }

  private static Path home(Map<String, String> environment, String system) {
    return HomeFolder.ofUser(environment, system, USER).path();
  }
}
