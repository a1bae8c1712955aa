package sheaf.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A desk that is open to a network. */
class EntranceTest {

  private static final String PASSPHRASE = "four words of ours";

  @TempDir private Path home;

  @Test
  void nothingOfTheShopIsSeenBeforeThePassphrase() throws Exception {
    try (DeskUnderTest desk = DeskUnderTest.guarded(home, PASSPHRASE)) {
      String job = desk.withAJob().spoken();
      for (String path : new String[] {"/", "/find", "/job/" + job, "/doubts", "/bow/" + job}) {
        HttpResponse<String> reply = desk.get(path);
        assertThat(reply.statusCode()).as(path).isEqualTo(401);
        assertThat(reply.body()).contains("passphrase").doesNotContain(job);
      }
      assertThat(desk.drop("a.jpg", new byte[10]).statusCode()).isEqualTo(401);
    }
  }

  @Test
  void passphraseOpensAndLeavingCloses() throws Exception {
    try (DeskUnderTest desk = DeskUnderTest.guarded(home, PASSPHRASE)) {
      assertThat(enter(desk, PASSPHRASE).statusCode()).isEqualTo(303);
      assertThat(desk.get("/").statusCode()).isEqualTo(200);

      assertThat(desk.post("/leave", Map.of()).statusCode()).isEqualTo(303);
      assertThat(desk.get("/").statusCode()).isEqualTo(401);
    }
  }

  @Test
  void wrongPassphraseIsTriedFiveTimesAtMost() throws Exception {
    try (DeskUnderTest desk = DeskUnderTest.guarded(home, PASSPHRASE)) {
      for (int i = 0; i < 5; i++) {
        assertThat(enter(desk, "wrong " + i).statusCode()).isEqualTo(403);
      }
      assertThat(enter(desk, PASSPHRASE).statusCode()).isEqualTo(429);
    }
  }

  @Test
  void customersReachTheirRecordWithoutIt() throws Exception {
    try (DeskUnderTest desk = DeskUnderTest.guarded(home, PASSPHRASE)) {
      desk.withAJob();
      assertThat(desk.get("/r/" + desk.key() + "/").statusCode()).isEqualTo(200);
    }
  }

  private static HttpResponse<String> enter(DeskUnderTest desk, String passphrase)
      throws Exception {
    Matcher token =
        Pattern.compile("name=\"token\" value=\"([^\"]+)\"").matcher(desk.get("/").body());
    assertThat(token.find()).isTrue();
    return desk.postWith(token.group(1), "/enter", Map.of("passphrase", passphrase));
  }
}
