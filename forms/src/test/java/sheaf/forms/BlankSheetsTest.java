package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.RegisterMark;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

class BlankSheetsTest {

  private static final int DPI = 150;
  private static final int FINE = 200;

  /** Each layout is drawn once for all tests that only look at it. */
  private static final Map<String, BufferedImage> PICTURES = new HashMap<>();

  /** Every variant once, on all papers and in both units by turns. */
  static Stream<Layout> layouts() {
    return Stream.of(Variant.values()).map(BlankSheetsTest::byTurns);
  }

  private static Layout byTurns(Variant variant) {
    List<Paper> papers = Stream.of(Paper.values()).filter(variant::comesOn).toList();
    Paper paper = papers.get(variant.ordinal() % papers.size());
    UnitSystem[] units = UnitSystem.values();
    return Layouts.current(variant, paper, units[variant.ordinal() / 2 % units.length]);
  }

  static Stream<Layout> all() {
    return Layouts.all().stream();
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("all")
  void everySheetOnEveryPaperIsPrintedAsItIsLaidOut(Layout layout) throws IOException {
    PICTURES.clear();
    bothCodesSayWhichSheetItIs(layout);
    everyCellOfEveryMarkIsPrintedInOneTone(layout);
    noSeamShowsBetweenTheBlackCellsOfAMark(layout);
    thePrintRuleIs100MillimetresAnd4InchesLong(layout);
    nothingIsPrintedInTheOuter6Millimetres(layout);
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void nothingIsPrintedInTheOuter6Millimetres(Layout layout) throws IOException {
    BufferedImage page = picture(layout, DPI);
    double width = layout.page().width();
    double height = layout.page().height();
    double margin = 6;
    List<MmRect> edges =
        List.of(
            new MmRect(0, 0, width, margin),
            new MmRect(0, height - margin, width, margin),
            new MmRect(0, 0, margin, height),
            new MmRect(width - margin, 0, margin, height));

    assertThat(edges).allMatch(edge -> tones(page, edge).stream().allMatch(tone -> tone == 255));
  }

  @ParameterizedTest
  @CsvSource({
    // ANSI/ASME Y14.1: A is 8.5 in by 11 in, B is 11 in by 17 in. ISO 216: A4 is 210 mm by 297 mm,
    // A3 is 297 mm by 420 mm. In points of 1/72 in.
    "LETTER, 612, 792",
    "TABLOID, 792, 1224",
    "A4, 595.276, 841.890",
    "A3, 841.890, 1190.551"
  })
  void aPageIsExactlyItsPaper(Paper paper, float width, float height) throws IOException {
    Layout layout = Layouts.current(Variant.TWO_DOTS, paper, UnitSystem.METRIC);

    try (PDDocument document = print(layout).open()) {
      PDRectangle box = document.getPage(0).getMediaBox();

      assertThat(box.getWidth()).isEqualTo(width, within(0.01f));
      assertThat(box.getHeight()).isEqualTo(height, within(0.01f));
      assertThat(document.getPage(0).getCropBox()).hasToString(box.toString());
      assertThat(document.getPage(0).getRotation()).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void bothCodesSayWhichSheetItIs(Layout layout) throws IOException {
    for (int dpi : List.of(DPI, FINE)) {
      BufferedImage page = picture(layout, dpi);

      assertThat(layout.codes())
          .allSatisfy(
              place -> assertThat(Pdf.code(page, dpi, place)).contains(code(layout).text()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void theCodesReadAtTheUsualResolutionOfAScanToo(Variant variant) throws IOException {
    int dpi = 300;
    Layout layout = Layouts.current(variant, Paper.A4, UnitSystem.METRIC);
    BufferedImage page = print(layout).grey(0, dpi);

    assertThat(layout.codes())
        .allSatisfy(place -> assertThat(Pdf.code(page, dpi, place)).contains(code(layout).text()));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void everyCellOfEveryMarkIsPrintedInOneTone(Layout layout) throws IOException {
    BufferedImage page = picture(layout, DPI);

    for (RegisterMark mark : layout.marks()) {
      for (int row = -1; row <= RegisterMark.CELLS; row++) {
        for (int column = -1; column <= RegisterMark.CELLS; column++) {
          boolean outside =
              row < 0 || column < 0 || row == RegisterMark.CELLS || column == RegisterMark.CELLS;
          boolean white = outside || mark.white(row, column);

          assertThat(tones(page, cell(mark, row, column)))
              .as("mark %d, cell %d/%d", mark.tag(), row, column)
              .allMatch(tone -> white ? tone > 250 : tone < 5);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void noSeamShowsBetweenTheBlackCellsOfAMark(Layout layout) throws IOException {
    BufferedImage page = picture(layout, DPI);

    for (RegisterMark mark : layout.marks()) {
      MmRect square = mark.square();
      double inset = 0.3;
      double thick = mark.cell() - 2 * inset;
      double length = square.width() - 2 * inset;
      MmRect left = new MmRect(square.x() + inset, square.y() + inset, thick, length);
      MmRect top = new MmRect(square.x() + inset, square.y() + inset, length, thick);

      assertThat(tones(page, left)).allMatch(tone -> tone < 5);
      assertThat(tones(page, top)).allMatch(tone -> tone < 5);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void thePrintRuleIs100MillimetresAnd4InchesLong(Layout layout) throws IOException {
    int dpi = FINE;
    BufferedImage page = picture(layout, dpi);
    double middle = layout.marks().get(3).square().centre().x();
    double from = layout.marks().get(3).square().bottom() + 1;
    double to = layout.marks().get(4).square().y() - 1;

    List<Double> mm = ticks(page, dpi, middle - 3.4, from, to);
    List<Double> inches = ticks(page, dpi, middle + 3.4, from, to);

    assertThat(mm).hasSize(3);
    assertThat(mm.get(2) - mm.get(0)).isEqualTo(100, within(0.2));
    assertThat(inches).hasSize(5);
    assertThat(inches.get(4) - inches.get(0)).isEqualTo(4 * 25.4, within(0.2));
  }

  @Test
  void theWordsAreEmbeddedSubsetsOfTheOneTypeface() throws IOException {
    try (PDDocument document = print(Layouts.all().get(0)).open()) {
      List<PDFont> fonts = new ArrayList<>();
      PDPage page = document.getPage(0);
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }

      assertThat(fonts).isNotEmpty();
      assertThat(fonts).allMatch(PDFont::isEmbedded);
      assertThat(fonts).allMatch(font -> font.getName().matches("[A-Z]{6}\\+Lato-.*"));
    }
  }

  @Test
  void aSheetSaysItsJobItsNumberAndWhatToDo() throws IOException {
    Layout layout = Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES);
    SheetCode code = new SheetCode(Jobs.JOB, 7, layout.id());

    String text = Pdf.of(out -> BlankSheets.write(List.of(code), out)).text();

    assertThat(text)
        .contains("Pair sheet", Jobs.JOB.spoken(), "Sheet 7")
        .contains("Pull the arrows, then tick the boxes below.", "Never dry fire")
        .doesNotContain("{");
  }

  @Test
  void theRuleSaysWhatItIsFor() throws IOException {
    String upward =
        print(Layouts.all().get(0)).letters(0).stream()
            .filter(Pdf.Letter::turned)
            .map(Pdf.Letter::text)
            .collect(Collectors.joining());

    assertThat(upward).isEqualTo("Printat100%:thisruleis100mm(left)and4in(right)");
  }

  @Test
  void thePdfAsksForNoScalingAndNamesItselfAndItsLanguage() throws IOException {
    try (PDDocument document = print(Layouts.all().get(0)).open()) {
      var catalog = document.getDocumentCatalog();

      assertThat(catalog.getViewerPreferences().getPrintScaling()).isEqualTo("None");
      assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
      assertThat(catalog.getLanguage()).isEqualTo("en");
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Sheaf sheets");
    }
  }

  @Test
  void aSheetOfAnUnknownLayoutIsNotPrinted() {
    LayoutId later = new LayoutId(Variant.TWO_DOTS, Paper.A4, UnitSystem.METRIC, 2);
    List<SheetCode> sheets = List.of(new SheetCode(Jobs.JOB, 1, later));

    assertThatThrownBy(() -> BlankSheets.write(sheets, OutputStream.nullOutputStream()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("P2AM2");
  }

  private static SheetCode code(Layout layout) {
    return new SheetCode(Jobs.JOB, 999, layout.id());
  }

  private static Pdf print(Layout layout) {
    return Pdf.of(out -> BlankSheets.write(List.of(code(layout)), out));
  }

  private static BufferedImage picture(Layout layout, int dpi) throws IOException {
    String key = layout.id().code() + "@" + dpi;
    BufferedImage picture = PICTURES.get(key);
    if (picture == null) {
      picture = print(layout).grey(0, dpi);
      PICTURES.put(key, picture);
    }
    return picture;
  }

  /** The inner part of a cell, away from its neighbours' blurred edges. */
  private static MmRect cell(RegisterMark mark, int row, int column) {
    double cell = mark.cell();
    return new MmRect(mark.square().x() + column * cell, mark.square().y() + row * cell, cell, cell)
        .grow(-0.3);
  }

  private static List<Integer> tones(BufferedImage page, MmRect place) {
    List<Integer> tones = new ArrayList<>();
    int bottom = Math.min(pixel(place.bottom()), page.getHeight());
    int right = Math.min(pixel(place.right()), page.getWidth());
    for (int y = pixel(place.y()); y < bottom; y++) {
      for (int x = pixel(place.x()); x < right; x++) {
        tones.add(page.getRaster().getSample(x, y, 0));
      }
    }
    return tones;
  }

  private static int pixel(double mm) {
    return (int) Math.round(mm / 25.4 * DPI);
  }

  /** Middles of the dark runs down a line, in millimetres. */
  private static List<Double> ticks(BufferedImage page, int dpi, double x, double from, double to) {
    List<Double> ticks = new ArrayList<>();
    int column = (int) Math.round(x / 25.4 * dpi);
    int start = -1;
    for (int y = (int) (from / 25.4 * dpi); y < to / 25.4 * dpi; y++) {
      boolean dark = page.getRaster().getSample(column, y, 0) < 128;
      if (dark && start < 0) {
        start = y;
      } else if (!dark && start >= 0) {
        ticks.add((start + y) / 2.0 * 25.4 / dpi);
        start = -1;
      }
    }
    return ticks;
  }
}
