package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.forms.BlankSheets;
import sheaf.samples.scan.ScanFile;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

/** Every sheet as it comes out of a printer is known again by the reader, and its size too. */
@Tag("slow")
class EverySheetTest {

  private static final JobId JOB = JobId.random(new SplittableRandom(21));
  private static final double POINTS_PER_INCH = 72;

  /** What printers do to a page, by turns: shrink it to fit, enlarge it, stretch it one way. */
  private static final List<PrintScale> SCALES =
      List.of(
          new PrintScale(1, 1),
          new PrintScale(0.94, 0.94),
          new PrintScale(1.03, 1.03),
          new PrintScale(0.97, 0.985),
          new PrintScale(1.01, 0.995));

  private final SheetReader reader = new SheetReader();

  static Stream<Arguments> sheets() {
    List<Arguments> sheets = new ArrayList<>();
    for (Variant variant : Variant.values()) {
      for (Paper paper : Paper.values()) {
        if (variant.comesOn(paper)) {
          UnitSystem units = UnitSystem.values()[sheets.size() % 2];
          LayoutId id = Layouts.current(variant, paper, units).id();
          for (int dpi : new int[] {150, 200, 300}) {
            PrintScale scale = SCALES.get(sheets.size() % SCALES.size());
            sheets.add(Arguments.of(id.code(), new SheetCode(JOB, 7, id), dpi, scale));
          }
        }
      }
    }
    return sheets.stream();
  }

  @ParameterizedTest(name = "{0} at {2} dpi, {3}")
  @MethodSource("sheets")
  void aBlankSheetIsKnownAgainAndItsPrintScaleIsRightWithinAFifthOfAPercent(
      String name, SheetCode code, int dpi, PrintScale printed) throws IOException {
    PageReading reading = read(ScanFile.png(scan(code, dpi, printed), dpi));

    assertThat(reading.sheet()).contains(code);
    assertThat(reading.holes()).isEmpty();
    // Without a tear on a tear sheet a person is asked whether there is none.
    Set<ReasonCode> said =
        code.layout().kind() == SheetKind.TEAR
            ? Set.of(ReasonCode.PRINT_SCALE, ReasonCode.TEAR_UNSURE)
            : Set.of(ReasonCode.PRINT_SCALE);
    assertThat(reading.reasons()).extracting(Reason::code).isSubsetOf(said);
    PrintScale measured = reading.printScale().orElseThrow();
    assertThat(measured.x()).isEqualTo(printed.x(), within(0.002));
    assertThat(measured.y()).isEqualTo(printed.y(), within(0.002));
  }

  private PageReading read(byte[] file) {
    List<ReadPage> pages = new ArrayList<>();
    reader.read("sheet.png", file, SheetReader.Proof.SKIP, pages::add);
    assertThat(pages).hasSize(1);
    return pages.get(0).reading();
  }

  /** A sheet printed at a scale in the middle of its paper. */
  private static BufferedImage scan(SheetCode code, int dpi, PrintScale printed)
      throws IOException {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    BlankSheets.write(List.of(code), pdf);
    double perMm = dpi / 25.4;
    int width = (int) Math.round(code.layout().paper().width() * perMm);
    int height = (int) Math.round(code.layout().paper().height() * perMm);
    BufferedImage page = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = page.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setBackground(Color.WHITE);
    g.translate(width * (1 - printed.x()) / 2, height * (1 - printed.y()) / 2);
    try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
      new PDFRenderer(document)
          .renderPageToGraphics(
              0,
              g,
              (float) (printed.x() * dpi / POINTS_PER_INCH),
              (float) (printed.y() * dpi / POINTS_PER_INCH));
    } finally {
      g.dispose();
    }
    return page;
  }
}
