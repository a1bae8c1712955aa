package sheaf.forms.draw;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.ICOSVisitor;

/** A compressed stream whose content is made when it is written, and let go of right after. */
final class LateStream extends COSStream {

  /** Makes the content. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private final Content content;

  LateStream(Content content) {
    this.content = content;
  }

  @Override
  public void accept(ICOSVisitor visitor) throws IOException {
    try (OutputStream out = createOutputStream(COSName.FLATE_DECODE)) {
      content.writeTo(out);
    }
    super.accept(visitor);
    close();
  }
}
