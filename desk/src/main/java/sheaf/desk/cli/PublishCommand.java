package sheaf.desk.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.web.Publishing;

/** {@code sheaf publish}: the customers' record pages for a web host. */
@Command(
    name = "publish",
    header = "Write the customers' record pages into a folder for any web host.",
    footer = {
      "",
      "Example:",
      "  sheaf publish site && rsync -r --delete site/ web:/srv/records/",
      "      only what changed is written anew; copy the folder to your web host",
      "",
      "Each record lies under its own secret key, without anybody's name; nothing lists",
      "them. Set the folder's web address as [record] address in the shop profile, so",
      "that the codes on cards lead there. Switch off the host's listing of folders."
    })
final class PublishCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "DIR", description = "The folder; made when it is not there.")
  private Path folder;

  PublishCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    ShopProfile profile = sheaf.profile();
    if (profile.recordAddress().isEmpty()) {
      throw Trouble.misuse(
          "No record address is set, so no card's code would lead to the pages: set it under [record] in the shop profile.");
    }
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      Publishing.Done done = Publishing.into(folder, store, profile, LocalDate.now(desk.clock()));
      String sentence =
          "%s in %s: %d written anew, %d taken away."
              .formatted(
                  Text.count(done.records(), "record"), folder, done.written(), done.removed());
      Text.wrap(sentence, desk.console().columns()).forEach(desk.console().out()::println);
    }
    desk.console().flush();
    return ExitStatus.OK.number();
  }
}
