package sheaf.desk.cli;

import sheaf.core.reading.PageReading;
import sheaf.desk.json.PageJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.PageLine;
import sheaf.desk.store.Scans;
import sheaf.desk.watch.Teller;

/** Writes a line for each page, and what goes wrong once for as long as it lasts. */
final class WatchTelling implements Teller {

  private final Console console;
  private final boolean json;
  private ExitStatus status = ExitStatus.OK;
  private String last = "";

  WatchTelling(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  @Override
  public synchronized void filed(Scans.Filed scan) {
    last = "";
    for (PageReading page : scan.pages()) {
      status = status.or(ExitStatus.of(page.state()));
      if (json) {
        console.json(PageJson.line(page));
      } else {
        console.out().println(PageLine.of(page) + (scan.isNew() ? "" : "  (known)"));
      }
    }
    console.out().flush();
  }

  @Override
  public synchronized void say(String sentence) {
    if (!sentence.equals(last)) {
      last = sentence;
      console.say("sheaf: " + sentence);
    }
  }

  /** The worst that was told of a page. */
  synchronized ExitStatus status() {
    return status;
  }
}
