package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script {@code sheaf} in a made-up tree, with a Java and a Maven that only say they ran. */
class StartScriptTest {

  private static final String SCRIPT = "../sheaf";

  private static final List<String> TOOLS =
      List.of(
          "cat",
          "dirname",
          "find",
          "head",
          "mkdir",
          "mv",
          "readlink",
          "rm",
          "sed",
          "sleep",
          "stty",
          "touch");

  private static final String JAVA =
      """
      #!/bin/sh
      if [ "$1" = -version ]; then
        echo 'openjdk version "17.0.1" 2021-10-19' >&2
      else
        while [ "$1" != -jar ]; do shift; done
        echo "java $*"
      fi
      """;

  private static final String MAVEN =
      """
      #!/bin/sh
      echo built >> BUILDS
      sleep 0.2
      touch desk/target/sheaf.jar
      """;

  @TempDir Path folder;
  private Path root;
  private Path programs;

  @BeforeEach
  void makeTree() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
    root = folder.resolve("a tree");
    programs = Files.createDirectories(folder.resolve("programs"));
    Files.createDirectories(root.resolve("desk/src/main"));
    Files.writeString(root.resolve("pom.xml"), "");
    Files.writeString(root.resolve("desk/pom.xml"), "");
    Files.writeString(root.resolve("desk/src/main/A.java"), "");
    program(root.resolve("sheaf"), Files.readString(Path.of(SCRIPT)));
    program(programs.resolve("java"), JAVA);
    // Maven runs where the script says, by -f; this one gets the folder written in.
    program(
        programs.resolve("mvn"),
        MAVEN
            .replace("BUILDS", "'" + root + "/builds'")
            .replace("desk/target", "'" + root + "'/desk/target"));
  }

  @Test
  void buildsOnceAndStarts() throws Exception {
    assertThat(start("show", "a b")).isEqualTo("java -jar " + jar() + " show a b\n");
    assertThat(start("--version")).isEqualTo("java -jar " + jar() + " --version\n");
    assertThat(builds()).isOne();
  }

  @Test
  void buildsAgainWhenASourceIsNewer() throws Exception {
    start();
    touch("desk/src/main/A.java");
    start();
    assertThat(builds()).isEqualTo(2);
    touch("desk/pom.xml");
    start();
    assertThat(builds()).isEqualTo(3);
  }

  @Test
  void buildsAgainWhenASourceIsGone() throws Exception {
    start();
    Files.delete(root.resolve("desk/src/main/A.java"));
    touch("desk/src/main");
    start();
    assertThat(builds()).isEqualTo(2);
  }

  @Test
  void startsWithTheClassesOfAFirstReading() throws Exception {
    Path scans = Files.createDirectories(root.resolve("sample-scans/scans"));
    Files.writeString(scans.resolve("job-2-first-pair-backing.jpg"), "");
    program(
        programs.resolve("java"),
        """
        #!/bin/sh
        for word; do
          case $word in
            -version) echo 'openjdk version "17.0.1" 2021-10-19' >&2 ;;
            -XX:ArchiveClassesAtExit=*) echo kept >"${word#*=}" ;;
            -XX:SharedArchiveFile=*) cat "${word#*=}" ;;
          esac
        done
        """);
    assertThat(start("--version")).isEqualTo("kept\n");
    assertThat(start("--version")).isEqualTo("kept\n");
    assertThat(root.resolve("target/building")).doesNotExist();
  }

  @Test
  void startsFromAnywhereThroughALink() throws Exception {
    Path link = folder.resolve("link");
    Files.createSymbolicLink(link, Path.of("a tree", "sheaf"));
    assertThat(run(folder, link.toString(), "demo")).isEqualTo("java -jar " + jar() + " demo\n");
  }

  @Test
  void twoStartsAtOnceBuildOnce() throws Exception {
    Process one = process(folder, root.resolve("sheaf").toString(), "one");
    Process two = process(folder, root.resolve("sheaf").toString(), "two");
    assertThat(output(one)).isEqualTo("java -jar " + jar() + " one\n");
    assertThat(output(two)).isEqualTo("java -jar " + jar() + " two\n");
    assertThat(builds()).isOne();
  }

  @Test
  void lockOfABuildThatDiedIsTakenAway() throws Exception {
    Process dead = new ProcessBuilder("true").start();
    dead.waitFor();
    Path lock = Files.createDirectories(root.resolve("target/building"));
    Files.writeString(lock.resolve("owner"), dead.pid() + "\n");
    assertThat(start("demo")).isEqualTo("java -jar " + jar() + " demo\n");
    assertThat(lock).doesNotExist();
  }

  @Test
  void failedBuildIsShown() throws Exception {
    program(programs.resolve("mvn"), "#!/bin/sh\necho 'no such library'\nexit 1\n");
    assertThat(start())
        .isEqualTo("no such library\nsheaf: the build failed; its messages are above.\n");
    assertThat(root.resolve("target/building")).doesNotExist();
  }

  @Test
  void olderJavaIsSaid() throws Exception {
    program(programs.resolve("java"), "#!/bin/sh\necho 'java version \"1.8.0_292\"' >&2\n");
    assertThat(start())
        .isEqualTo(
            "sheaf: Java 17 or later is needed; " + programs.resolve("java") + " is version 8.\n");
  }

  @Test
  void missingMavenIsSaid() throws Exception {
    Files.delete(programs.resolve("mvn"));
    assertThat(start())
        .isEqualTo(
            "sheaf: Maven is needed to build Sheaf once, and there is no 'mvn' on the path.\n");
  }

  @Test
  void missingJavaIsSaid() throws Exception {
    Files.delete(programs.resolve("java"));
    assertThat(start())
        .isEqualTo("sheaf: Java 17 or later is needed, and there is no 'java' on the path.\n");
  }

  private String jar() {
    return root.resolve("desk/target/sheaf.jar").toString();
  }

  private int builds() throws Exception {
    return Files.readAllLines(root.resolve("builds")).size();
  }

  private void touch(String file) throws Exception {
    Files.setLastModifiedTime(
        root.resolve(file), FileTime.from(Instant.now().plusSeconds(2 + builds())));
  }

  private static void program(Path file, String text) throws Exception {
    Files.writeString(file, text);
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  private String start(String... words) throws Exception {
    return run(folder, root.resolve("sheaf").toString(), words);
  }

  private String run(Path where, String script, String... words) throws Exception {
    return output(process(where, script, words));
  }

  private Process process(Path where, String script, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of("/bin/sh", script));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).directory(where.toFile());
    builder.environment().put("PATH", tools() + ":" + programs);
    builder.environment().remove("JAVA_HOME");
    return builder.redirectErrorStream(true).start();
  }

  /** The few programs of the system that the script needs, without its Java and Maven. */
  private Path tools() throws Exception {
    Path tools = folder.resolve("tools");
    if (Files.notExists(tools)) {
      Files.createDirectories(tools);
      for (String tool : TOOLS) {
        String place = Files.exists(Path.of("/usr/bin", tool)) ? "/usr/bin/" : "/bin/";
        program(tools.resolve(tool), "#!/bin/sh\nexec " + place + tool + " \"$@\"\n");
      }
    }
    return tools;
  }

  private static String output(Process process) throws Exception {
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return output;
  }
}
