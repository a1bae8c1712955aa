package sheaf.desk.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sheaf.core.job.JobId;
import sheaf.core.reading.NumberJudge;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.intake.PageSource;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;
import sheaf.desk.web.http.Hosts;
import sheaf.scanner.FlatPicture;
import sheaf.scanner.SheetReader;

/** A desk of its own, on a free port of this computer, with one visitor. */
final class DeskUnderTest implements AutoCloseable {

  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-09-14T16:30:00Z"), ZoneOffset.UTC);

  private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

  private final StorePlace place;
  private final DeskSite site;
  private final HttpClient client = HttpClient.newHttpClient();
  private String cookie = "";

  private DeskUnderTest(StorePlace place, DeskSite site) {
    this.place = place;
    this.site = site;
  }

  /** A desk whose scans are read for real. */
  static DeskUnderTest reading(Path home) {
    return of(home, new SheetReader(NumberJudge.USUALLY_SURE)::read, Optional.empty());
  }

  /** A desk that asks for a passphrase and reads nothing. */
  static DeskUnderTest guarded(Path home, String passphrase) {
    return of(home, (name, file, proof, pages) -> {}, Optional.of(passphrase));
  }

  static DeskUnderTest of(Path home, PageSource reader, Optional<String> passphrase) {
    HomeFolder folder = new HomeFolder(home);
    StorePlace place = StorePlace.in(folder);
    Works works =
        new Works(
            folder,
            place,
            CLOCK,
            new SecureRandom(),
            DeskUnderTest::profile,
            reader,
            FlatPicture::jpeg,
            "test");
    DeskSite.Listening listening =
        new DeskSite.Listening(
            InetAddress.getLoopbackAddress(), 0, Hosts.loopback(), passphrase, Optional.empty());
    return new DeskUnderTest(place, DeskSite.start(works, listening));
  }

  static ShopProfile profile() {
    ShopProfile usual = ShopProfile.USUAL;
    return new ShopProfile(
        usual.shop(),
        usual.paper(),
        usual.units(),
        Optional.of(new RecordAddress("https://records.example/r/")),
        usual.distances(),
        usual.ownDistances(),
        usual.sure(),
        usual.database(),
        usual.originals(),
        usual.scans(),
        usual.tolerances());
  }

  int port() {
    return site.port();
  }

  /** The store behind it; the caller closes it. */
  Store store() {
    return Store.open(place, CLOCK);
  }

  /** Has a job in the store, of which one pair sheet was read. */
  JobId withAJob() {
    try (Store store = store()) {
      store.file("scan.png", new byte[] {1}, List.of(Pages.pair(Pages.JOB, 4, 0, 5)), "test");
    }
    return Pages.JOB;
  }

  /** The secret of that job. */
  String key() {
    try (Store store = store()) {
      return store.recordKey(Pages.JOB).orElseThrow().text();
    }
  }

  HttpRequest.Builder request(String path) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port() + path));
    return cookie.isEmpty() ? request : request.header("Cookie", cookie);
  }

  HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    HttpResponse<String> reply = client.send(request, BodyHandlers.ofString(UTF_8));
    reply
        .headers()
        .firstValue("Set-Cookie")
        .filter(text -> text.startsWith("sheaf="))
        .ifPresent(text -> cookie = text.substring(0, text.indexOf(';')));
    return reply;
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(request(path).build());
  }

  /** The token of this visitor's forms. */
  String token() throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(get("/find").body());
    return token.find() ? token.group(1) : "";
  }

  /** Sends a form with the right token. */
  HttpResponse<String> post(String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    return postWith(token(), path, fields);
  }

  /** Sends a form with some token. */
  HttpResponse<String> postWith(String token, String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    String body =
        fields.entrySet().stream()
            .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), UTF_8))
            .collect(Collectors.joining("&", "token=" + token + "&", ""));
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  /** Drops a file as the page's script does. */
  HttpResponse<String> drop(String name, byte[] content) throws IOException, InterruptedException {
    return dropWith(token(), name, content);
  }

  HttpResponse<String> dropWith(String token, String name, byte[] content)
      throws IOException, InterruptedException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    String field = "--x\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n" + token + "\r\n";
    String file =
        "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"%s\"\r\n\r\n"
            .formatted(name);
    body.writeBytes(field.getBytes(UTF_8));
    body.writeBytes(file.getBytes(UTF_8));
    body.writeBytes(content);
    body.writeBytes("\r\n--x--\r\n".getBytes(UTF_8));
    return send(
        request("/drop")
            .header("Content-Type", "multipart/form-data; boundary=x")
            .header("X-Sheaf-Script", "1")
            .POST(BodyPublishers.ofByteArray(body.toByteArray()))
            .build());
  }

  @Override
  public void close() {
    site.close();
  }
}
