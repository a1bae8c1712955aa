package sheaf.desk.doctor;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.desk.intake.PageSource;
import sheaf.forms.BlankSheets;
import sheaf.scanner.SheetReader.Proof;

/** Draws a sheet in memory and reads it back. */
final class SelfTest {

  private static final String WHAT = "Print and read";

  private static final int DPI = 200;

  /** The example of an id, on no paper of any job. */
  private static final SheetCode SHEET =
      new SheetCode(
          new JobId("7G4KQ2M8XE0"),
          1,
          Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES).id());

  private SelfTest() {}

  /** The sheet as a scanner would see it. */
  private static byte[] picture() throws IOException {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    BlankSheets.write(List.of(SHEET), pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      ImageIO.write(
          new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY), "png", png);
      return png.toByteArray();
    }
  }

  static Finding run(PageSource source) {
    try {
      List<PageReading> pages = new ArrayList<>();
      source.read("self-test", picture(), Proof.SKIP, page -> pages.add(page.reading()));
      boolean same =
          pages.stream().findFirst().flatMap(PageReading::sheet).equals(Optional.of(SHEET));
      return same
          ? Finding.well(WHAT, "a sheet was drawn and read back: typeface, codes, OpenCV")
          : Finding.ill(WHAT, "a sheet that was drawn could not be read back: build Sheaf anew.");
    } catch (IOException | RuntimeException | LinkageError e) {
      return Finding.ill(
          WHAT,
          "something that Sheaf is built from does not work here (" + e + "): build it anew.");
    }
  }
}
