package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sheaf.core.result.JobSummary;
import sheaf.desk.demo.Demo;
import sheaf.desk.demo.DemoFolder;
import sheaf.desk.demo.DemoText;
import sheaf.desk.demo.Tried;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.report.JobReport;
import sheaf.desk.report.PageTable;
import sheaf.desk.report.Text;

/** {@code sheaf demo}: everything once, on samples. */
@Command(
    name = "demo",
    header = "Show everything once: print papers, read sample scans, print a card.",
    footer = {
      "",
      "Examples:",
      "  sheaf demo",
      "      into the folder demo-out, which may be thrown away afterwards",
      "  sheaf demo --out look",
      "      somewhere else",
      "",
      "The samples are made, not shot, so that the true offset of each is known; one",
      "of them is beyond reading on purpose. Your own data is not touched."
    })
final class DemoCommand implements Callable<Integer> {

  private final Desk desk;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "demo-out",
      description = "Where to put what it makes. Default: ./demo-out")
  private Path out;

  DemoCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    DemoFolder folder = new DemoFolder(out);
    Progress progress = new Progress(console, desk.clock(), Demo.samples());
    Demo demo =
        new Demo(
            desk.reader().apply(ShopProfile.USUAL.sure()), Version.number(), folder, desk.clock());
    progress.show(0, 0);
    Demo.Result result;
    try {
      result = demo.run(done -> progress.show(done, done));
    } finally {
      progress.clear();
    }
    console.out().print(text(folder, result));
    console.flush();
    if (!result.asExpected()) {
      throw Trouble.environment(
          "A sample did not read as it should on this machine; see 'Ended' above.");
    }
    return ExitStatus.OK.number();
  }

  private String text(DemoFolder folder, Demo.Result result) {
    int width = desk.console().columns();
    return PageTable.of(result.tried().stream().map(Tried::reading).toList(), width)
        + "\n"
        + DemoText.of(result.tried(), width)
        + "\n"
        + result.job().map(job -> JobReport.of(job, home(folder), width) + "\n").orElse("")
        + files(folder, result)
        + "\n"
        + next(folder, result);
  }

  private String files(DemoFolder folder, Demo.Result result) {
    return "In "
        + folder.path()
        + ":\n"
        + file("pack.pdf", "blank papers for one bow")
        + file("scans", "the sample scans, as they come from a scanner or a phone")
        + file("proofs", "each sheet laid flat, with what was found drawn on it")
        + result
            .job()
            .map(job -> file("card.pdf", "the finished card of job " + job.job().spoken()))
            .orElse("")
        + file("home", "what was filed, apart from your own data");
  }

  private String file(String name, String what) {
    return Text.hanging("  %-9s ".formatted(name), what, desk.console().columns());
  }

  private static String home(DemoFolder folder) {
    return Sheaf.homeWords(folder.path().resolve("home"));
  }

  private static String next(DemoFolder folder, Demo.Result result) {
    String home = " " + home(folder);
    StringBuilder text = new StringBuilder("Try next:\n");
    result
        .job()
        .map(JobSummary::job)
        .ifPresent(job -> text.append("  sheaf show ").append(job).append(home).append("\n"));
    List.of(
            "sheaf read " + folder.scans().resolve("*") + home,
            "sheaf print pack -o pack.pdf",
            "sheaf --help")
        .forEach(line -> text.append("  ").append(line).append("\n"));
    return text.toString();
  }
}
