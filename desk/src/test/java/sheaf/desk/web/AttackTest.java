package sheaf.desk.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Said;
import sheaf.core.job.JobId;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.desk.store.Store;

/**
 * What somebody with bad intentions sends gets nowhere. The cases follow OWASP's File Upload and
 * HTTP Headers cheat sheets, ASVS 5.0 chapter V5 and the W3C's Good Practices for Capability URLs.
 */
@TestInstance(Lifecycle.PER_CLASS)
class AttackTest {

  private static final String SCRIPT = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

  private Path home;
  private DeskUnderTest desk;
  private JobId job;

  @BeforeAll
  void open(@TempDir Path folder) {
    home = folder;
    desk = DeskUnderTest.reading(home);
    job = desk.withAJob();
  }

  @AfterAll
  void close() {
    desk.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/files/../sheaf.db",
        "/files/%2e%2e/sheaf.db",
        "/files/..%2fsheaf.db",
        "/files/%2e%2e%2f%2e%2e%2fetc%2fpasswd",
        "/files/..%5csheaf.db",
        "/files/desk.css%00.js",
        "/job/..%2f..%2fetc/sheet/1",
        "/r/..%2fsheaf.db/",
        "//etc/passwd"
      })
  void noPathLeadsOutside(String path) throws Exception {
    String reply = raw("GET " + path + " HTTP/1.1", "Host: localhost", "");

    assertThat(reply).startsWith("HTTP/1.1 404").doesNotContain("SQLite", "root:");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../../evil.jpg", "..\\\\..\\\\evil.jpg", "/etc/cron.d/evil", "evil.php%00.jpg"})
  void nameOfAFileIsOnlyEverShown(String name) throws Exception {
    HttpResponse<String> reply = desk.drop(name, "no picture".getBytes(UTF_8));

    assertThat(reply.statusCode()).isEqualTo(200);
    assertThat(reply.body()).contains("not read").doesNotContain("..", "etc/");
    try (Stream<Path> files = Files.walk(home)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .noneMatch(file -> file.contains("evil") || file.startsWith("upload"));
    }
  }

  @Test
  void pictureThatClaimsToBeHugeIsRefusedFromItsHeader() throws Exception {
    byte[] bomb = png(60_000, 60_000);

    HttpResponse<String> reply = desk.drop("small.png", bomb);

    assertThat(bomb).hasSizeLessThan(1000);
    assertThat(reply.statusCode()).isEqualTo(200);
    assertThat(reply.body()).contains("not read").contains("pixels");
  }

  @Test
  void pageOfAnotherKindBehindAPicturesNameIsNoPicture() throws Exception {
    HttpResponse<String> page = desk.drop("photo.jpg", ("<html>" + SCRIPT).getBytes(UTF_8));
    HttpResponse<String> both =
        desk.drop("photo.gif", ("GIF89a/*" + SCRIPT + "*/=1;").getBytes(UTF_8));

    assertThat(List.of(page.body(), both.body()))
        .allSatisfy(body -> assertThat(body).contains("not read").doesNotContain("<script"));
  }

  @Test
  void fileThatIsTooLargeIsRefusedAndLeavesNothing() throws Exception {
    HttpResponse<String> reply = desk.drop("large.jpg", new byte[60_000_001]);

    assertThat(reply.statusCode()).isEqualTo(413);
    try (Stream<Path> files = Files.list(home)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .noneMatch(file -> file.startsWith("upload"));
    }
  }

  @Test
  void oneBadFileDisturbsNoOther() throws Exception {
    assertThat(desk.drop("bad.jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, 1, 2, 3}).statusCode())
        .isEqualTo(200);
    assertThat(desk.get("/job/" + job.spoken()).statusCode()).isEqualTo(200);
  }

  @Test
  void formsOfOtherSitesAreNotTaken() throws Exception {
    desk.get("/find");
    for (String path :
        List.of(
            "/who",
            "/doubts",
            "/print",
            "/job/" + job.spoken() + "/key",
            "/job/" + job.spoken() + "/card",
            "/job/" + job.spoken() + "/sheet/4",
            "/bow/" + job.spoken())) {
      assertThat(desk.postWith("", path, Map.of()).statusCode()).as(path).isEqualTo(403);
      assertThat(desk.postWith("x".repeat(43), path, Map.of()).statusCode()).isEqualTo(403);
    }
    assertThat(desk.dropWith("", "a.jpg", new byte[10]).statusCode()).isEqualTo(403);
  }

  @Test
  void rightTokenFromAnotherSiteIsNotTakenEither() throws Exception {
    String form = "token=" + desk.token() + "&initials=X";

    HttpResponse<String> reply =
        desk.send(
            desk.request("/who")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", "http://elsewhere.example")
                .POST(BodyPublishers.ofString(form))
                .build());

    assertThat(reply.statusCode()).isEqualTo(403);
  }

  @Test
  void otherNamesLeadNowhere() throws Exception {
    for (String host :
        List.of("elsewhere.example", "localhost.elsewhere.example", "", "10.0.0.1")) {
      assertThat(raw("GET / HTTP/1.1", "Host: " + host, "")).startsWith("HTTP/1.1 421");
    }
  }

  @Test
  void guessedRecordIsNotThereAndManyGuessesAreStopped() throws Exception {
    try (DeskUnderTest other = DeskUnderTest.reading(home.resolve("other"))) {
      for (int i = 0; i < 30; i++) {
        assertThat(other.get("/r/" + "0".repeat(32) + "/").statusCode()).isEqualTo(404);
      }
      assertThat(other.get("/r/" + "0".repeat(32) + "/").statusCode()).isEqualTo(429);
    }
  }

  @Test
  void replacedAddressIsGoneAndTheNewOneOpens() throws Exception {
    String old = desk.key();
    assertThat(desk.get("/r/" + old + "/").statusCode()).isEqualTo(200);

    assertThat(desk.post("/job/" + job.spoken() + "/key", Map.of()).statusCode()).isEqualTo(303);

    assertThat(desk.key()).isNotEqualTo(old);
    assertThat(desk.get("/r/" + old + "/").statusCode()).isEqualTo(410);
    assertThat(desk.get("/r/" + old + "/card.pdf").statusCode()).isEqualTo(410);
    assertThat(desk.get("/r/" + desk.key() + "/").statusCode()).isEqualTo(200);
  }

  @Test
  void recordTellsNobodyWhereItsVisitorsComeFrom() throws Exception {
    for (String path : List.of("/r/" + desk.key() + "/", "/r/" + desk.key() + "/card.pdf")) {
      HttpResponse<String> reply = desk.get(path);

      assertThat(reply.headers().firstValue("Referrer-Policy")).contains("no-referrer");
      assertThat(reply.headers().firstValue("X-Robots-Tag"))
          .hasValueSatisfying(value -> assertThat(value).contains("noindex"));
    }
  }

  @Test
  void logHoldsNoSecret() throws Exception {
    String key = desk.key();
    desk.postWith("", "/r/" + key + "/", Map.of());
    desk.post("/who", Map.of("initials", "AB"));

    try (Stream<Path> files = Files.list(home.resolve("log"))) {
      for (Path file : files.toList()) {
        assertThat(Files.readString(file)).contains("/who").doesNotContain(key, desk.token());
      }
    }
  }

  @Test
  void scriptInEveryTextIsOnlyText() throws Exception {
    try (Store store = desk.store()) {
      store.answer(
          job,
          List.of(
              new Answer(
                  OptionalInt.of(4),
                  new Said.Value(
                      "distance",
                      SCRIPT,
                      OptionalDouble.empty(),
                      Optional.empty(),
                      Teller.TYPED,
                      ""),
                  Optional.of(SCRIPT),
                  DeskUnderTest.CLOCK.instant(),
                  Optional.of(SCRIPT))),
          "test");
    }
    desk.post("/who", Map.of("initials", SCRIPT));
    desk.drop(SCRIPT.replace("\"", ""), "no picture".getBytes(UTF_8));
    String query = "?q=" + URLEncoder.encode(SCRIPT, UTF_8);
    for (String path :
        List.of(
            "/",
            "/find" + query,
            "/print?job=" + query.substring(3),
            "/job/" + job.spoken(),
            "/job/" + job.spoken() + "/sheet/4",
            "/bow/" + job.spoken(),
            "/doubts?job=" + job.spoken(),
            "/r/" + desk.key() + "/",
            "/" + query.substring(3))) {
      assertThat(desk.get(path).body()).as(path).doesNotContain("<script>", "<img src=x", "\"'>");
    }
  }

  @Test
  void everyReplyHasTheSafeHeaders() throws Exception {
    String at = "/job/" + job.spoken();
    for (String path :
        List.of(
            "/",
            "/find",
            "/doubts",
            "/print",
            at,
            at + "/sheet/4",
            at + "/sheet/4/picture",
            "/bow/" + job.spoken(),
            "/files/desk.css",
            "/files/none",
            "/robots.txt",
            "/r/" + desk.key() + "/card.pdf",
            "/r/none",
            "/none")) {
      HttpResponse<String> reply = desk.get(path);
      assertThat(reply.headers().firstValue("Content-Security-Policy"))
          .as(path)
          .hasValueSatisfying(
              policy ->
                  assertThat(policy)
                      .startsWith("default-src 'none'")
                      .contains("frame-ancestors 'none'", "base-uri 'none'")
                      .doesNotContain("unsafe"));
      assertThat(reply.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(reply.headers().firstValue("X-Frame-Options")).contains("DENY");
      assertThat(reply.headers().firstValue("Server")).isEmpty();
    }
  }

  @Test
  void cookiesAreKeptFromScriptsAndOtherSites() throws Exception {
    String reply = raw("GET /find HTTP/1.1", "Host: localhost", "");

    assertThat(reply).containsPattern("(?i)Set-Cookie: sheaf=.*HttpOnly; SameSite=Lax");
  }

  @Test
  void whatChangesSomethingIsNeverDoneByAddressAlone() throws Exception {
    for (String path :
        List.of("/who", "/drop", "/job/" + job.spoken() + "/key", "/enter", "/leave")) {
      assertThat(desk.get(path).statusCode()).as(path).isEqualTo(405);
    }
    String before = desk.key();
    desk.get("/job/" + job.spoken());
    assertThat(desk.key()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{}",
        "[{}]",
        "[{\"near\":[1]}]",
        "[{\"near\":[1,\"x\"]}]",
        "[{\"near\":[1e9,1]}]",
        "[{\"near\":[50,50],\"at\":[50,50],\"head\":\"axe\"}]",
        "[[[[[[[["
      })
  void damagedEditsOfASheetAreRefusedAndChangeNothing(String edits) throws Exception {
    String sheet = "/job/" + job.spoken() + "/sheet/4";
    String before = desk.get(sheet).body().replaceAll("token[^>]*>", "");
    for (String path : List.of(sheet, sheet + "/try")) {
      HttpResponse<String> reply =
          desk.send(
              desk.request(path)
                  .header("Content-Type", "application/json")
                  .header("X-Sheaf-Script", "1")
                  .header("X-Sheaf-Token", desk.token())
                  .POST(BodyPublishers.ofString(edits))
                  .build());
      assertThat(reply.statusCode()).as(path).isEqualTo(400);
    }
    assertThat(desk.get(sheet).body().replaceAll("token[^>]*>", "")).isEqualTo(before);
  }

  /** A request as it goes over the wire, which no client library would send. */
  private String raw(String... lines) throws Exception {
    try (Socket socket = new Socket("localhost", desk.port())) {
      socket.setSoTimeout(10_000);
      OutputStream out = socket.getOutputStream();
      List<String> all = Arrays.asList(lines);
      String head = String.join("\r\n", all.subList(0, all.size() - 1));
      out.write((head + "\r\nConnection: close\r\n\r\n").getBytes(UTF_8));
      out.flush();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), UTF_8);
    }
  }

  /** A PNG that says how large it is and holds hardly anything. */
  private static byte[] png(int width, int height) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    byte[] header =
        ByteBuffer.allocate(13)
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 2, 0, 0, 0})
            .array();
    chunk("IHDR", header, file);
    chunk("IDAT", new byte[] {0x78, (byte) 0x9C, 3, 0, 0, 0, 0, 1}, file);
    chunk("IEND", new byte[0], file);
    return file.toByteArray();
  }

  private static void chunk(String name, byte[] data, ByteArrayOutputStream file) {
    byte[] letters = name.getBytes(UTF_8);
    CRC32 sum = new CRC32();
    sum.update(letters);
    sum.update(data);
    file.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    file.writeBytes(letters);
    file.writeBytes(data);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
  }
}
