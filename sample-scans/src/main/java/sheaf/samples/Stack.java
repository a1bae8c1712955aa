package sheaf.samples;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** A stack of scans in one PDF, as a sheet feeder delivers it. */
final class Stack {

  private Stack() {}

  /**
   * A PDF of so many pages.
   *
   * @param scans JPEG files of letter pages, taken in turn; each page holds a copy of its own
   */
  static byte[] pdf(List<byte[]> scans, int pages) throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (int i = 0; i < pages; i++) {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        PDImageXObject image =
            JPEGFactory.createFromStream(
                document, new ByteArrayInputStream(scans.get(i % scans.size())));
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          content.drawImage(
              image, 0, 0, page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
        }
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }
}
