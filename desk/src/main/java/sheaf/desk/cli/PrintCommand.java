package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.desk.home.Settings;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.Text;
import sheaf.forms.Backing;
import sheaf.forms.BlankSheets;
import sheaf.forms.Pack;

/** {@code sheaf print}: blank papers as a PDF. */
@Command(
    name = "print",
    header = "Print blank papers as a PDF.",
    footer = {
      "",
      "Examples:",
      "  sheaf print pack -o pack.pdf",
      "      everything for one bow: a bench card and pair sheets with one job id",
      "  sheaf print pack --copies 20 -o pad.pdf",
      "      a pad of twenty packs, each with a job id of its own",
      "  sheaf print pair --dots one --paper a4 --units metric -o pair.pdf",
      "      a pair sheet with one shared dot, on A4, in metres",
      "  sheaf print backing -o backing.pdf",
      "      the coloured page to lay behind a shot sheet while it is scanned",
      "  sheaf print pair -o - | lp",
      "      straight to a printer",
      "",
      "Print at 100 %% ('actual size'), never 'fit to page'."
    })
final class PrintCommand implements Callable<Integer> {

  private static final int MOST_COPIES = 500;

  private final Desk desk;
  private final Sheaf sheaf;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "WHAT",
      converter = Choices.OfPrintable.class,
      completionCandidates = Choices.OfPrintable.class,
      description =
          "pair: field points and broadheads compared; bench-card: inspection and measurements;"
              + " pack: both, for one bow; backing: the page laid behind a shot sheet.")
  private Printable what;

  @Option(
      names = "--dots",
      paramLabel = "two|one",
      converter = Choices.OfDots.class,
      completionCandidates = Choices.OfDots.class,
      description = "Pair sheet only: a dot for each head (the default), or one for both.")
  private Variant dots;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      converter = Choices.OfPaper.class,
      completionCandidates = Choices.OfPaper.class,
      description = "Default: letter, or paper= in sheaf.properties.")
  private Paper paper;

  @Option(
      names = "--units",
      paramLabel = "in|metric",
      converter = Choices.OfUnits.class,
      completionCandidates = Choices.OfUnits.class,
      description =
          "Inches and yards, or millimetres and metres. Default: in, or units= in"
              + " sheaf.properties.")
  private UnitSystem units;

  @Option(
      names = "--copies",
      paramLabel = "N",
      defaultValue = "1",
      description = "1 to " + MOST_COPIES + "; each copy or pack gets a job id of its own.")
  private int copies;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      required = true,
      description = "The PDF to write; - for standard output.")
  private Path output;

  PrintCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    check();
    Settings settings = sheaf.settings();
    Paper onto = paper != null ? paper : settings.paper().orElse(Paper.LETTER);
    UnitSystem in = units != null ? units : settings.units().orElse(UnitSystem.INCHES);
    if (what == Printable.BACKING) {
      Output.write(desk.console(), output, out -> Backing.write(onto, copies, out));
      say("for a colour printer", onto);
    } else {
      printSheets(onto, in);
    }
    return ExitStatus.OK.number();
  }

  private void check() {
    if (copies < 1 || copies > MOST_COPIES) {
      throw new ParameterException(
          spec.commandLine(), "--copies must be 1 to " + MOST_COPIES + ", not " + copies);
    }
    if (dots != null && what != Printable.PAIR) {
      throw new ParameterException(spec.commandLine(), "--dots is for pair sheets only");
    }
  }

  private void printSheets(Paper onto, UnitSystem in) {
    List<SheetCode> sheets = new ArrayList<>();
    List<String> jobs = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      JobId job = JobId.random(desk.random());
      jobs.add(job.spoken());
      sheets.addAll(sheetsOf(job, onto, in));
    }
    Output.write(desk.console(), output, out -> BlankSheets.write(sheets, out));
    String named = copies == 1 ? "job " + jobs.get(0) : "a job id for each, from " + jobs.get(0);
    say(Text.count(sheets.size(), "page") + ", " + named, onto);
  }

  private List<SheetCode> sheetsOf(JobId job, Paper onto, UnitSystem in) {
    if (what == Printable.PACK) {
      return Pack.sheets(job, onto, in);
    }
    Variant variant =
        what == Printable.BENCH_CARD ? Variant.FRONT : dots == null ? Variant.TWO_DOTS : dots;
    return List.of(new SheetCode(job, 1, Layouts.current(variant, onto, in).id()));
  }

  private void say(String detail, Paper onto) {
    String where = Output.name(output);
    String sentence =
        "%s on %s paper (%s) written to %s. Print at 100 %%, not 'fit to page'."
            .formatted(Text.count(copies, what.noun()), onto.label(), detail, where);
    Text.wrap(sentence, desk.console().columns()).forEach(desk.console()::say);
  }
}
