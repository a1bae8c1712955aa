package sheaf.forms;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import sheaf.forms.draw.EmbeddedFile;

/** What was found in a file that may be a finished card. */
public sealed interface CarriedRecord {

  /**
   * A record as it was put in.
   *
   * @param json the record for programs
   */
  record Whole(byte[] json) implements CarriedRecord {
    /** Copies the content. */
    public Whole {
      json = json.clone();
    }

    @Override
    public byte[] json() {
      return json.clone();
    }
  }

  /**
   * No record to trust.
   *
   * @param why for people: goes behind the file's name
   */
  record None(String why) implements CarriedRecord {}

  /** What is said of a file that no PDF reader opens. */
  None NO_PDF = new None("is no PDF that can be opened, so it is no finished card.");

  /** The header that stands at a PDF's beginning (ISO 32000-1, 7.5.2). */
  String HEADER = "%PDF-";

  /** Looks for a record in a file. */
  static CarriedRecord of(byte[] pdf, String name) {
    if (!beginsAsPdf(pdf)) {
      return NO_PDF;
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Optional<String> digest = EmbeddedFile.announcedDigest(document);
      if (digest.isEmpty()) {
        return new None("is no finished card of ours: it names no record inside.");
      }
      Optional<byte[]> json = EmbeddedFile.content(document, name);
      if (json.isEmpty()) {
        return new None("has lost the record that it carried: it was saved by another program.");
      }
      if (!EmbeddedFile.sha256(json.get()).equals(digest.get())) {
        return new None(
            "carries a record that was damaged or changed after it was printed: its digest does"
                + " not fit.");
      }
      return new Whole(json.get());
    } catch (IOException | RuntimeException e) {
      // The parser ends in exceptions of many kinds on files that only begin like a PDF.
      return NO_PDF;
    }
  }

  private static boolean beginsAsPdf(byte[] file) {
    int length = Math.min(file.length, HEADER.length());
    return new String(file, 0, length, StandardCharsets.US_ASCII).equals(HEADER);
  }
}
