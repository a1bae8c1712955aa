package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.work.LastValues;
import sheaf.desk.work.Printable;
import sheaf.forms.Backing;
import sheaf.forms.BlankSheets;
import sheaf.forms.Pack;
import sheaf.forms.SheetValues;
import sheaf.forms.Sides;

/** {@code sheaf print}: blank papers as a PDF. */
@Command(
    name = "print",
    header = "Print blank papers as a PDF.",
    footer = {
      "",
      "Examples:",
      "  sheaf print pack -o pack.pdf",
      "      bench card, tear, line and pair sheets for one bow, with one job id",
      "  sheaf print pack --jobs 20 --sheets tear*2,line,pair*2 -o pad.pdf",
      "      a pad of twenty packs, each with a bench card and a job id of its own",
      "  sheaf print pair --dots one --paper a4 --units metric -o pair.pdf",
      "      a pair sheet with one shared dot, on A4, in metres",
      "  sheaf print line --distances 3,5,10,20,30 -o line.pdf",
      "      a line sheet with your distances in its boxes",
      "  sheaf print return-card --from 7G4KQ-2M8XE-0 -o card.pdf",
      "      a bench card with what that job left printed beside it",
      "  sheaf print backing -o backing.pdf",
      "      the coloured page to lay behind a shot sheet while it is scanned",
      "  sheaf print scale-page -o scale.pdf",
      "      rules to check a printer with, before its first pad",
      "  sheaf print pair -o - | lp",
      "      straight to a printer",
      "",
      "Print at 100 %% ('actual size'), never 'fit to page'."
    })
final class PrintCommand implements Callable<Integer> {

  private static final int MOST_COPIES = 2000;

  private final Desk desk;
  private final Sheaf sheaf;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "WHAT",
      converter = Choices.OfPrintable.class,
      completionCandidates = Choices.OfPrintable.class,
      description =
          "pack: everything for one bow; bench-card: inspection and measurements, front and back;"
              + " tear: four tears through paper; line: impact from near to far; pair: field points"
              + " and broadheads compared; group: the size of a group; sight-in: which way to move"
              + " the sight; force-draw: how hard the bow pulls at each inch; return-card: a bench card beside an earlier job's values; backing: the"
              + " page laid behind a shot sheet; scale-page: rules to check a printer with.")
  private Printable what;

  @Option(
      names = "--sheets",
      paramLabel = "LIST",
      converter = SheetList.Reader.class,
      description =
          "Pack only: what follows the bench card, such as tear*2,line,pair*2 (the default)."
              + " Also line-printed, pair-one, group, sight-in, force-draw, scale-page, and return-card in"
              + " place of the bench card.")
  private SheetList sheets;

  @Option(
      names = "--bow",
      paramLabel = "compound|recurve|crossbow",
      converter = Choices.OfBowType.class,
      completionCandidates = Choices.OfBowType.class,
      description = "Whose card: compound is the default.")
  private BowType bow;

  @Option(
      names = "--dots",
      paramLabel = "two|one",
      converter = Choices.OfDots.class,
      completionCandidates = Choices.OfDots.class,
      description = "Pair sheet only: a dot for each head (the default), or one for both.")
  private Variant dots;

  @Option(
      names = "--distances",
      paramLabel = "written|printed|N,N,...",
      converter = LineDistances.Reader.class,
      completionCandidates = LineDistances.Reader.class,
      description =
          "Line sheets: boxes to write them in, the sheet's own in print, or yours in the boxes,"
              + " in yards or metres, such as 3,5,10. Default: what the shop profile sets, else"
              + " written.")
  private LineDistances distances;

  @Option(
      names = "--from",
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "Return card only: the job whose values are printed on it.")
  private JobId from;

  @Option(
      names = "--sides",
      paramLabel = "both|one",
      converter = Choices.OfSides.class,
      completionCandidates = Choices.OfSides.class,
      description =
          "Pack only: for printing on both sides (the default), where blank pages keep the backs"
              + " of targets empty, or on one.")
  private Sides sides;

  @Option(
      names = "--units",
      paramLabel = "in|metric",
      converter = Choices.OfUnits.class,
      completionCandidates = Choices.OfUnits.class,
      description =
          "Inches and yards, or millimetres and metres. Default: what the shop profile says.")
  private UnitSystem units;

  @Option(
      names = {"--copies", "--jobs"},
      paramLabel = "N",
      defaultValue = "1",
      description = "1 to " + MOST_COPIES + "; each copy or pack gets a job id of its own.")
  private int copies;

  @Mixin private PdfOptions pdf;

  PrintCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    check();
    ShopProfile profile = sheaf.profile();
    Paper onto = pdf.paper(profile);
    UnitSystem in = units != null ? units : profile.units();
    if (what == Printable.BACKING) {
      pdf.write(desk.console(), out -> Backing.write(onto, copies, out));
      say("for a colour printer", onto);
    } else {
      printSheets(what.isSmall() ? onto.small() : onto, in, profile);
    }
    return ExitStatus.OK.number();
  }

  private void check() {
    if (copies < 1 || copies > MOST_COPIES) {
      throw misuse("--copies (or --jobs) must be 1 to " + MOST_COPIES + ", not " + copies);
    }
    boolean pack = what == Printable.PACK;
    boolean returns = what == Printable.RETURN_CARD || (sheets != null && sheets.hasReturnCard());
    only(dots, what == Printable.PAIR, "--dots is for pair sheets only");
    only(
        distances, pack || what == Printable.LINE, "--distances is for line sheets and packs only");
    if (pack && distances != null && distances.variant() == Variant.SET_DISTANCES) {
      throw misuse("--distances printed is for line sheets only; a pack has --sheets line-printed");
    }
    only(sheets, pack, "--sheets is for packs only");
    only(sides, pack, "--sides is for packs only");
    only(bow, pack || what.isCard(), "--bow is for packs and cards only");
    only(from, returns, "--from is for return cards only");
    if (what.isSmall() && pdf.said().filter(paper -> paper != paper.small()).isPresent()) {
      throw misuse("A " + what.noun() + " comes on letter and a4 paper only: targets are larger");
    }
  }

  private void only(Object option, boolean fits, String complaint) {
    if (option != null && !fits) {
      throw misuse(complaint);
    }
  }

  private ParameterException misuse(String complaint) {
    return new ParameterException(spec.commandLine(), complaint);
  }

  private void printSheets(Paper onto, UnitSystem in, ShopProfile profile) {
    List<Variant> variants = variants();
    List<SheetCode> codes = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      codes.addAll(Pack.sheets(JobId.random(desk.random()), variants, onto, in));
    }
    SheetValues values = lastValues().withDistances(distances(in, profile));
    Sides printed = sides();
    pdf.write(desk.console(), out -> BlankSheets.write(codes, printed, values, out));
    String first = codes.get(0).job().spoken();
    String named = copies == 1 ? "job " + first : "a job id for each, from " + first;
    say(pages(codes, printed) + ", " + named, onto);
    note(codes);
  }

  /** So that it is known later which sheets are missing, and which visit came before. */
  private void note(List<SheetCode> codes) {
    try (Store store = Store.open(sheaf.store(), desk.clock())) {
      store.printed(codes, Optional.ofNullable(from), Version.number());
    } catch (Trouble e) {
      desk.console().say("sheaf: The sheets are printed but could not be noted. " + e.getMessage());
    }
  }

  private SheetValues lastValues() {
    return from == null
        ? SheetValues.NONE
        : SheetValues.last(
            LastValues.of(StoredJob.find(from, sheaf.store(), desk.clock()).summary()));
  }

  /** What stands in the boxes of line sheets. */
  private List<Distance> distances(UnitSystem in, ShopProfile profile) {
    if (distances == null) {
      return profile.ownDistances(in).orElse(List.of());
    }
    Unit unit = in == UnitSystem.INCHES ? Unit.YARD : Unit.METRE;
    return distances.numbers().stream().map(number -> new Distance(number, unit)).toList();
  }

  private String pages(List<SheetCode> codes, Sides printed) {
    String pages = Text.count(BlankSheets.pages(codes, printed), "page");
    return printed == Sides.BOTH ? pages + " for both sides" : pages;
  }

  private Sides sides() {
    if (sides != null) {
      return sides;
    }
    return what == Printable.PACK || what.isCard() ? Sides.BOTH : Sides.ONE;
  }

  private List<Variant> variants() {
    BowType whose = bow == null ? BowType.COMPOUND : bow;
    if (what == Printable.PACK) {
      return sheets == null ? Pack.usual(whose) : sheets.variants(whose);
    }
    if (dots != null) {
      return List.of(dots);
    }
    return distances == null ? what.variants(whose) : List.of(distances.variant());
  }

  private void say(String detail, Paper onto) {
    String where = pdf.name();
    String sentence =
        "%s on %s paper (%s) written to %s. Print at 100 %%, not 'fit to page'."
            .formatted(Text.count(copies, what.noun()), onto.label(), detail, where);
    Text.wrap(sentence, desk.console().columns()).forEach(desk.console()::say);
  }
}
