package sheaf.desk.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.profile.ProfileInForce;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.StorePlace;

/** The command {@code sheaf} itself: what its subcommands share. */
@Command(
    name = "sheaf",
    header = "Prints the papers a bow technician works on, and reads them back.",
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "A day with it:",
      "  sheaf print pack -o pack.pdf          print papers for a bow, at 100 %%",
      "  sheaf read scans.pdf                  read them back, filled in and shot",
      "  sheaf watch /srv/scans                or whatever the scanner drops there",
      "  sheaf jobs --open                     see what is left to do",
      "  sheaf show 7G4KQ-2M8XE-0              see what a job came to",
      "  sheaf plan 7G4KQ-2M8XE-0              see what to move next, and why",
      "  sheaf card 7G4KQ-2M8XE-0 -o card.pdf  print the finished card",
      "",
      "New here? 'sheaf demo' shows all of that with sample scans.",
      "'sheaf COMMAND --help' explains each command with examples.",
      "",
      "Exit status: 0 all well, 1 the machine would not do it, 2 misuse,",
      "             3 a page needs a person's look, 4 a page or card was refused."
    })
public final class Sheaf implements Runnable {

  private final Desk desk;

  @Spec private CommandSpec spec;

  @Option(
      names = "--home",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description =
          "Where Sheaf keeps everything. By default the user's data folder, or what SHEAF_HOME"
              + " names.")
  private Path home;

  @Option(
      names = "--store",
      paramLabel = "ADDRESS",
      scope = ScopeType.INHERIT,
      converter = StoreWord.class,
      description =
          "A PostgreSQL database that several desks share, such as"
              + " jdbc:postgresql://server/sheaf. By default what the shop profile says, else a"
              + " file in that folder.")
  private String store;

  private Sheaf(Desk desk) {
    this.desk = desk;
  }

  /**
   * Runs one command.
   *
   * @param desk what it needs of the world outside
   * @param args the words of the command line
   * @return its exit status
   */
  public static int run(Desk desk, String... args) {
    Sheaf sheaf = new Sheaf(desk);
    return commandLine(sheaf).execute(args);
  }

  private static CommandLine commandLine(Sheaf sheaf) {
    Desk desk = sheaf.desk;
    Endings endings = new Endings(desk.console(), sheaf::home);
    CommandLine all =
        new CommandLine(sheaf)
            .addSubcommand("print", new PrintCommand(desk, sheaf))
            .addSubcommand("read", new ReadCommand(desk, sheaf))
            .addSubcommand("watch", new WatchCommand(desk, sheaf))
            .addSubcommand("confirm", new ConfirmCommand(desk, sheaf))
            .addSubcommand("set", new SetCommand(desk, sheaf))
            .addSubcommand("show", new ShowCommand(desk, sheaf))
            .addSubcommand("plan", new PlanCommand(desk, sheaf))
            .addSubcommand("jobs", new JobsCommand(desk, sheaf))
            .addSubcommand("find", new FindCommand(desk, sheaf))
            .addSubcommand("bow", new BowCommand(desk, sheaf))
            .addSubcommand("card", new CardCommand(desk, sheaf))
            .addSubcommand("desk", new DeskCommand(desk, sheaf))
            .addSubcommand("publish", new PublishCommand(desk, sheaf))
            .addSubcommand("import", new ImportCommand(desk, sheaf))
            .addSubcommand("export", new ExportCommand(desk, sheaf))
            .addSubcommand("backup", new BackupCommand(desk, sheaf))
            .addSubcommand("restore", new RestoreCommand(desk, sheaf))
            .addSubcommand("verify", new VerifyCommand(desk, sheaf))
            .addSubcommand(
                "profile",
                new CommandLine(new ProfileCommand(desk, sheaf))
                    .addSubcommand("new", new ProfileNewCommand(desk, sheaf))
                    .addSubcommand("check", new ProfileCheckCommand(desk, sheaf)))
            .addSubcommand("doctor", new DoctorCommand(desk, sheaf))
            .addSubcommand("demo", new DemoCommand(desk))
            .addSubcommand("completion", new CompletionCommand(desk))
            .addSubcommand("help", new HelpCommand());
    dress(all.getCommandSpec());
    return all.setOut(new PrintWriter(desk.console().out(), true))
        .setErr(new PrintWriter(desk.console().err(), true))
        .setUsageHelpWidth(desk.console().columns())
        .setParameterExceptionHandler(endings)
        .setExecutionExceptionHandler(endings);
  }

  /** What all commands have in common. */
  private static void dress(CommandSpec command) {
    if (!command.helpCommand()) {
      command.mixinStandardHelpOptions(true).versionProvider(new Version());
    }
    command
        .usageMessage()
        .synopsisHeading("%nUsage: ")
        .parameterListHeading("%n")
        .optionListHeading("%nOptions:%n");
    command.subcommands().values().forEach(sub -> dress(sub.getCommandSpec()));
  }

  /** Without a command there is nothing to do. */
  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "What shall it do? The commands are "
            + String.join(", ", spec.subcommands().keySet())
            + ".");
  }

  /** The folder that was named, or else this user's. */
  HomeFolder home() {
    return home == null ? desk.usersHome() : new HomeFolder(home);
  }

  /** The store that was named, or what the profile says, or the one in the folder. */
  StorePlace store() {
    ShopProfile profile = profile();
    Optional<String> address = Optional.ofNullable(store).or(profile::database);
    return new StorePlace(home(), address, profile.originals(), desk.who());
  }

  /** The words that make another command find the same store; empty when it does so anyway. */
  String homeWords() {
    String folder = home == null ? "" : homeWords(home);
    return (folder + " " + storeWords()).strip();
  }

  /** A password that somebody typed must not be shown again. */
  private String storeWords() {
    if (store == null) {
      return "";
    }
    return "--store " + (store.matches("[\\w./:-]+") ? store : "ADDRESS");
  }

  /** A command to type next, with the words that make it find the same folder. */
  String commandWords(String command) {
    return ("sheaf " + command + " " + homeWords()).stripTrailing();
  }

  /** The words that make a command look into a folder. */
  static String homeWords(Path home) {
    String name = home.toString();
    return "--home " + (name.matches("[\\w./\\\\:~-]+") ? name : "'" + name + "'");
  }

  /**
   * What the shop set once.
   *
   * @throws sheaf.desk.outcome.Trouble a misuse that says all that is wrong with its profile
   */
  ShopProfile profile() {
    return ProfileInForce.of(home()).profile();
  }
}
