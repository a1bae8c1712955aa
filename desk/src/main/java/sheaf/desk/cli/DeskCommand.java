package sheaf.desk.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import javax.net.ssl.SSLContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.web.Certificate;
import sheaf.desk.web.DeskSite;
import sheaf.desk.web.Works;
import sheaf.desk.web.http.Hosts;

/** {@code sheaf desk}: the desk in the browser. */
@Command(
    name = "desk",
    header = "Open the desk in the browser: drop papers, settle doubts, print cards.",
    footer = {
      "",
      "Examples:",
      "  sheaf desk",
      "      for this computer only, at http://localhost:8765/",
      "  SHEAF_PASSPHRASE='four words of your own' sheaf desk --lan",
      "      for the shop's phones too; they are asked for the passphrase",
      "  sheaf desk --lan --passphrase-file desk.pass --certificate desk.p12",
      "      the same, encrypted; the certificate's password is in SHEAF_CERTIFICATE_PASSWORD",
      "",
      "Without a certificate, whoever is in the same network can listen in.",
      "Who changed what is kept in log/ in Sheaf's folder. Ctrl-C ends it."
    })
final class DeskCommand implements Callable<Integer> {

  private static final int LEAST_PASSPHRASE = 12;

  private final Desk desk;
  private final Sheaf sheaf;

  @Spec private CommandSpec spec;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8765",
      description = "Where it listens; 0 for any that is free. Default: 8765.")
  private int port;

  @Option(names = "--lan", description = "Listen to the whole network, behind a passphrase.")
  private boolean lan;

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description = "Its first line is the passphrase. Default: SHEAF_PASSPHRASE.")
  private Path passphraseFile;

  @Option(
      names = "--name",
      paramLabel = "HOST",
      description = "Another name that this computer goes by in the network.")
  private List<String> names = List.of();

  @Option(
      names = "--certificate",
      paramLabel = "FILE",
      description = "A PKCS #12 file with certificate and key: then all is encrypted.")
  private Path certificate;

  DeskCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    if (port < 0 || port > 65_535) {
      throw misuse("--port must be 0 to 65535");
    }
    Optional<String> passphrase = passphrase();
    if (lan && passphrase.isEmpty()) {
      throw misuse("--lan needs a passphrase: set SHEAF_PASSPHRASE, or name a --passphrase-file");
    }
    Optional<SSLContext> encryption =
        Optional.ofNullable(certificate)
            .map(
                file ->
                    Certificate.read(
                        file, desk.environment().getOrDefault("SHEAF_CERTIFICATE_PASSWORD", "")));
    Hosts hosts = lan ? Hosts.ofThisComputer(names) : Hosts.loopback();
    DeskSite.Listening listening =
        new DeskSite.Listening(address(), port, hosts, passphrase, encryption);
    try (DeskSite site = DeskSite.start(works(), listening)) {
      say(site, encryption.isPresent());
      waitForTheEnd();
    }
    return ExitStatus.OK.number();
  }

  private Works works() {
    // Said now rather than on the first page, when the profile makes no sense.
    double sure = sheaf.profile().sure();
    return new Works(
        sheaf.home(),
        sheaf.store(),
        desk.clock(),
        desk.random(),
        sheaf::profile,
        desk.reader().apply(sure),
        desk.flat(),
        Version.number());
  }

  private ParameterException misuse(String complaint) {
    return new ParameterException(spec.commandLine(), complaint);
  }

  private Optional<String> passphrase() {
    Optional<String> typed =
        passphraseFile == null
            ? Optional.ofNullable(desk.environment().get("SHEAF_PASSPHRASE"))
            : Optional.of(firstLine(passphraseFile));
    typed = typed.map(String::strip).filter(text -> !text.isEmpty());
    if (typed.filter(text -> text.length() < LEAST_PASSPHRASE).isPresent()) {
      throw misuse(
          "The passphrase must have at least %d characters: take four words or more"
              .formatted(LEAST_PASSPHRASE));
    }
    return typed;
  }

  private static String firstLine(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8).lines().findFirst().orElse("");
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private InetAddress address() {
    try {
      return lan ? InetAddress.getByName("0.0.0.0") : InetAddress.getByName("127.0.0.1");
    } catch (UnknownHostException e) {
      throw new IllegalStateException("an address written in digits needs no looking up", e);
    }
  }

  private void say(DeskSite site, boolean encrypted) {
    String scheme = encrypted ? "https://" : "http://";
    Console console = desk.console();
    console.out().println("The desk is open at " + scheme + "localhost:" + site.port() + "/");
    if (lan) {
      for (InetAddress one : Hosts.addresses()) {
        console
            .out()
            .println("In the network: " + scheme + Hosts.written(one) + ":" + site.port() + "/");
      }
      if (!encrypted) {
        console.say("sheaf: Without --certificate, whoever is in the same network can listen in.");
      }
    }
    console.flush();
  }

  private static void waitForTheEnd() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
