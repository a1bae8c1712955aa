package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

/** Many sheets in one file. */
class PadTest {

  private static final int DPI = 150;

  @Test
  void theSameSheetsGiveTheSameBytesEvenWhenPrintedAtTheSameTime() {
    List<SheetCode> sheets = Pack.sheets(Jobs.JOB, Paper.A4, UnitSystem.INCHES);
    byte[] alone = Pdf.of(out -> BlankSheets.write(sheets, out)).bytes();

    assertThat(
            IntStream.range(0, 8)
                .parallel()
                .mapToObj(i -> Pdf.of(out -> BlankSheets.write(sheets, out)).bytes()))
        .allMatch(bytes -> Arrays.equals(bytes, alone));
  }

  @Test
  void aFurtherPageOfALayoutCostsLittle() {
    SheetCode sheet = code(Layouts.all().get(0));
    int one = Pdf.of(out -> BlankSheets.write(List.of(sheet), out)).bytes().length;
    int many = Pdf.of(out -> BlankSheets.write(Collections.nCopies(41, sheet), out)).bytes().length;

    assertThat((many - one) / 40).isLessThan(5_000);
  }

  @Test
  void pagesComeInTheOrderAskedFor() throws IOException {
    List<SheetCode> sheets = new ArrayList<>(Pack.sheets(Jobs.JOB, Paper.A4, UnitSystem.METRIC));
    Collections.reverse(sheets);
    Pdf pdf = Pdf.of(out -> BlankSheets.write(sheets, out));

    for (int i = 0; i < sheets.size(); i++) {
      MmRect place = Layouts.find(sheets.get(i).layout()).orElseThrow().codes().get(0);
      assertThat(Pdf.code(pdf.grey(i, DPI), DPI, place)).contains(sheets.get(i).text());
    }
  }

  @Test
  void aCardsBackIsOnTheBackOfItsFrontAndNothingOnTheBackOfATarget() throws IOException {
    List<SheetCode> pack = Pack.sheets(Jobs.JOB, Paper.LETTER, UnitSystem.INCHES);
    List<SheetCode> two = Stream.concat(pack.stream(), pack.stream()).toList();

    Pdf pdf = Pdf.of(out -> BlankSheets.write(two, Sides.BOTH, SheetValues.NONE, out));

    try (PDDocument document = pdf.open()) {
      String printed =
          IntStream.range(0, document.getNumberOfPages())
              .mapToObj(i -> document.getPage(i).hasContents() ? "x" : "-")
              .collect(Collectors.joining());
      // Front and back, five targets with empty backs; then the next job on a leaf of its own.
      assertThat(printed).isEqualTo("xx" + "x-".repeat(5) + "xx" + "x-".repeat(4) + "x");
      assertThat(BlankSheets.pages(two, Sides.BOTH)).isEqualTo(printed.length());
      assertThat(BlankSheets.pages(two, Sides.ONE)).isEqualTo(14);
      assertThat(document.getDocumentCatalog().getViewerPreferences().getDuplex())
          .isEqualTo("DuplexFlipLongEdge");
    }
  }

  @Test
  void aPadIsCollatedAndEveryPageBearsItsOwnCode() throws IOException {
    SplittableRandom random = new SplittableRandom(11);
    List<SheetCode> pad = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      pad.addAll(Pack.sheets(JobId.random(random), Paper.A4, UnitSystem.METRIC));
    }
    Pdf pdf = Pdf.of(out -> BlankSheets.write(pad, out));

    for (int i = 0; i < pad.size(); i++) {
      MmRect place = Layouts.find(pad.get(i).layout()).orElseThrow().codes().get(0);
      assertThat(Pdf.code(pdf.grey(i, DPI), DPI, place)).contains(pad.get(i).text());
    }
  }

  private static SheetCode code(Layout layout) {
    return new SheetCode(Jobs.JOB, 999, layout.id());
  }
}
