package sheaf.desk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheaf.core.reading.NumberJudge;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.StorePlace;
import sheaf.desk.web.DeskSite;
import sheaf.desk.web.Works;
import sheaf.desk.web.http.Hosts;
import sheaf.scanner.FlatPicture;
import sheaf.scanner.SheetReader;

/**
 * Measures the desk in the browser: its first page, a photo dropped when it is warm, and many
 * dropped at once while somebody else looks at pages.
 *
 * <p>Arguments: a photo of a sheet, and how many are dropped at once (20).
 */
final class WebSpeed {

  private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");
  private static final int WARM = 5;
  private static final double MEGA = 1e6;

  private final HttpClient client = HttpClient.newHttpClient();
  private final String base;
  private String cookie = "";
  private String token = "";

  private WebSpeed(int port) {
    this.base = "http://localhost:" + port;
  }

  /** Prints the figures. */
  public static void main(String[] args) throws Exception {
    byte[] photo = Files.readAllBytes(Path.of(args[0]));
    int clients = args.length > 1 ? Integer.parseInt(args[1]) : 20;
    Path home = Files.createTempDirectory("web-speed");
    long begun = System.nanoTime();
    try (DeskSite site = DeskSite.start(works(home), listening())) {
      WebSpeed speed = new WebSpeed(site.port());
      speed.greet();
      System.out.printf(
          "first page      %6.0f ms after start, %.0f ms of processor time since Java began%n",
          since(begun), processor());
      speed.warm(photo);
      speed.load(photo, clients);
    }
  }

  private static Works works(Path home) {
    HomeFolder folder = new HomeFolder(home);
    return new Works(
        folder,
        StorePlace.in(folder),
        Clock.systemDefaultZone(),
        new SecureRandom(),
        () -> ShopProfile.USUAL,
        new SheetReader(NumberJudge.USUALLY_SURE)::read,
        FlatPicture::jpeg,
        "speed");
  }

  private static DeskSite.Listening listening() {
    return new DeskSite.Listening(
        InetAddress.getLoopbackAddress(), 0, Hosts.loopback(), Optional.empty(), Optional.empty());
  }

  private static double since(long begun) {
    return (System.nanoTime() - begun) / MEGA;
  }

  private void greet() throws IOException, InterruptedException {
    HttpResponse<String> reply =
        client.send(
            HttpRequest.newBuilder(URI.create(base + "/")).build(), BodyHandlers.ofString());
    cookie = reply.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    Matcher found = TOKEN.matcher(reply.body());
    if (!found.find()) {
      throw new IOException("the first page bears no token");
    }
    token = found.group(1);
  }

  private double get(String path) throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(base + path)).header("Cookie", cookie).build();
    if (client.send(request, BodyHandlers.ofByteArray()).statusCode() != 200) {
      throw new IOException(path + " was refused");
    }
    return since(begun);
  }

  private double drop(byte[] photo, int number) throws IOException, InterruptedException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.writeBytes(
        "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"%d.jpg\"\r\n\r\n"
            .formatted(number)
            .getBytes(UTF_8));
    body.writeBytes(photo);
    body.writeBytes("\r\n--x--\r\n".getBytes(UTF_8));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(base + "/drop"))
            .header("Cookie", cookie)
            .header("X-Sheaf-Script", "1")
            .header("X-Sheaf-Token", token)
            .header("Content-Type", "multipart/form-data; boundary=x")
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
            .build();
    long begun = System.nanoTime();
    HttpResponse<String> reply = client.send(request, BodyHandlers.ofString());
    if (reply.statusCode() != 200 || !reply.body().contains("Sheet ")) {
      throw new IOException("a photo was not read: " + reply.statusCode());
    }
    return since(begun);
  }

  private void warm(byte[] photo) throws IOException, InterruptedException {
    List<Double> times = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < 2 * WARM; i++) {
      before = i == WARM ? processor() : before;
      double time = drop(photo, i);
      if (i >= WARM) {
        times.add(time);
      }
    }
    System.out.printf(
        "a photo, warm   %6.0f ms from drop to answer (median of %d), %.0f ms of processor time%n",
        median(times), WARM, (processor() - before) / WARM);
  }

  private void load(byte[] photo, int clients) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(clients);
    long begun = System.nanoTime();
    List<Future<Double>> dropped = new ArrayList<>();
    for (int i = 0; i < clients; i++) {
      int number = i;
      dropped.add(threads.submit(() -> drop(photo, 100 + number)));
    }
    List<Double> pages = new ArrayList<>();
    long most = 0;
    while (dropped.stream().anyMatch(one -> !one.isDone())) {
      for (String path : List.of("/", "/find", "/print", "/doubts")) {
        pages.add(get(path));
      }
      Runtime runtime = Runtime.getRuntime();
      most = Math.max(most, runtime.totalMemory() - runtime.freeMemory());
      Thread.sleep(50);
    }
    for (Future<Double> one : dropped) {
      one.get();
    }
    threads.shutdown();
    System.out.printf(
        "%d photos at once %5.0f ms until all were answered%n", clients, since(begun));
    System.out.printf(
        "other pages     %6.0f ms median meanwhile, of %d%n", median(pages), pages.size());
    System.out.printf(
        "heap            %6.0f MB at most, of %.0f allowed%n",
        most / MEGA, Runtime.getRuntime().maxMemory() / MEGA);
  }

  /** What this process took of all processors, which others' work does not lengthen. */
  private static double processor() {
    return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toNanos() / MEGA;
  }

  private static double median(List<Double> times) {
    return times.stream().sorted().toList().get(times.size() / 2);
  }
}
