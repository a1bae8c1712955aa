package sheaf.desk.web;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import javax.net.ssl.SSLContext;
import sheaf.desk.web.http.AttemptLimit;
import sheaf.desk.web.http.AuditLog;
import sheaf.desk.web.http.Hosts;
import sheaf.desk.web.http.Routes;
import sheaf.desk.web.http.Routes.Door;
import sheaf.desk.web.http.Visitors;
import sheaf.desk.web.http.WebServer;

/** The desk, running. */
public final class DeskSite implements AutoCloseable {

  /** Wrong passphrases in five minutes, from one address and from all. */
  private static final int WRONG_FROM_ONE = 5;

  private static final int WRONG_FROM_ALL = 40;

  /** Records that are not there, asked for in five minutes. */
  private static final int GUESSES_FROM_ONE = 30;

  private static final int GUESSES_FROM_ALL = 300;

  private final Stores stores;
  private final WebServer server;

  /**
   * How it listens.
   *
   * @param at address of this computer; loopback for nobody else
   * @param port 0 for any that is free
   * @param hosts the names it goes by
   * @param passphrase that is asked for; empty for none
   * @param encryption of everything on the way; empty for none
   */
  public record Listening(
      InetAddress at,
      int port,
      Hosts hosts,
      Optional<String> passphrase,
      Optional<SSLContext> encryption) {}

  private DeskSite(Stores stores, WebServer server) {
    this.stores = stores;
    this.server = server;
  }

  /** Starts it. */
  public static DeskSite start(Works works, Listening listening) {
    Stores stores = new Stores(works.place(), works.clock());
    Look look = new Look(works.profile(), listening.passphrase().isPresent());
    Visitors visitors =
        new Visitors(
            listening.passphrase(),
            listening.encryption().isPresent(),
            works.random(),
            works.clock());
    WebServer.Rules rules =
        new WebServer.Rules(
            routes(works, look, stores, visitors),
            listening.hosts(),
            visitors,
            new AuditLog(works.home().path().resolve("log"), works.clock()),
            look);
    InetSocketAddress at = new InetSocketAddress(listening.at(), listening.port());
    return new DeskSite(stores, WebServer.start(at, listening.encryption(), rules));
  }

  private static Routes routes(Works works, Look look, Stores stores, Visitors visitors) {
    // Each processor decodes one picture at a time, so that memory has a bound whoever comes.
    Semaphore hands = new Semaphore(Runtime.getRuntime().availableProcessors(), true);
    Routes routes = new Routes();
    shop(routes, works, look, stores, hands);
    Entrance entrance =
        new Entrance(
            look, visitors, new AttemptLimit(WRONG_FROM_ONE, WRONG_FROM_ALL, works.clock()));
    RecordPage record =
        new RecordPage(
            works,
            look,
            stores,
            new AttemptLimit(GUESSES_FROM_ONE, GUESSES_FROM_ALL, works.clock()));
    return routes
        .post("/enter", Door.OPEN, entrance::enter)
        .post("/leave", Door.SHOP, entrance::leave)
        .post("/who", Door.SHOP, entrance::who)
        .get("/robots.txt", Door.OPEN, Resources::robots)
        .get("/files/{name}", Door.OPEN, Resources::show)
        .get("/r/record.css", Door.OPEN, Resources::recordStyle)
        .get("/r/{key}", Door.OPEN, record::slash)
        .get("/r/{key}/", Door.OPEN, record::show)
        .get("/r/{key}/card.pdf", Door.OPEN, record::card);
  }

  private static void shop(Routes routes, Works works, Look look, Stores stores, Semaphore hands) {
    DropPage drop = new DropPage(works, look, stores, new Taking(works, stores, hands));
    JobPage job = new JobPage(works, look, stores);
    DoubtsPage doubts = new DoubtsPage(works, look, stores);
    SheetPage sheet = new SheetPage(works, look, stores, new SheetImages(works.flat(), hands));
    BowPage bow = new BowPage(works, look, stores);
    PrintPage print = new PrintPage(works, look, stores);
    routes
        .get("/", Door.SHOP, drop::show)
        .files("/drop", Door.SHOP, drop::take)
        .get("/find", Door.SHOP, new FindPage(look, stores)::show)
        .get("/job/{job}", Door.SHOP, job::show)
        .post("/job/{job}/card", Door.SHOP, job::card)
        .post("/job/{job}/key", Door.SHOP, job::newKey)
        .get("/job/{job}/sheet/{sheet}", Door.SHOP, sheet::show)
        .post("/job/{job}/sheet/{sheet}", Door.SHOP, sheet::keep)
        .post("/job/{job}/sheet/{sheet}/try", Door.SHOP, sheet::tried)
        .get("/job/{job}/sheet/{sheet}/picture", Door.SHOP, sheet::image)
        .get("/s/{code}", Door.SHOP, sheet::byCode)
        .get("/doubts", Door.SHOP, doubts::show)
        .post("/doubts", Door.SHOP, doubts::take)
        .get("/bow/{job}", Door.SHOP, bow::show)
        .post("/bow/{job}", Door.SHOP, bow::link)
        .get("/print", Door.SHOP, print::show)
        .post("/print", Door.SHOP, print::print);
  }

  /** The port that it listens at. */
  public int port() {
    return server.port();
  }

  @Override
  public void close() {
    server.close();
    stores.close();
  }
}
