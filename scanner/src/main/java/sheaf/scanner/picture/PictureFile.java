package sheaf.scanner.picture;

import java.nio.charset.StandardCharsets;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.NativeLibraries;

/** A file of one or more pictures, recognised by its content, never by its name. */
public interface PictureFile extends AutoCloseable {

  /** How many pages it has, at least one. */
  int pages() throws UnreadableException;

  /** Decodes one page, counted from 0; the caller closes it. */
  Picture page(int index) throws UnreadableException;

  @Override
  void close();

  /**
   * Opens a file.
   *
   * @throws UnreadableException when it is empty, damaged, locked or no picture
   */
  static PictureFile open(byte[] content) throws UnreadableException {
    NativeLibraries.load();
    if (content.length == 0) {
      throw new UnreadableException(
          ReasonCode.EMPTY_FILE,
          "The file is empty: wait until the scanner has finished, or copy the file again.");
    }
    if (JpegFile.looksLike(content)) {
      return single(content, JpegFile.header(content));
    }
    if (PngFile.looksLike(content)) {
      return single(content, PngFile.header(content));
    }
    if (TiffFile.looksLike(content)) {
      return TiffFile.open(content);
    }
    if (PdfFile.looksLike(content)) {
      return PdfFile.open(content);
    }
    throw new UnreadableException(
        ReasonCode.NOT_A_PICTURE,
        isHeif(content)
            ? "The picture is HEIF (.heic), which Sheaf does not read: set the phone's camera to save JPEG, or send the picture as JPEG."
            : "The file is no JPEG, PNG, TIFF or PDF: save the scan or photo as one of these.");
  }

  /** Whether it starts as ISO/IEC 23008-12 and 14496-12 say: a file type box of a HEIF brand. */
  private static boolean isHeif(byte[] file) {
    return file.length >= 12
        && new String(file, 4, 8, StandardCharsets.ISO_8859_1)
            .matches("ftyp(hei[cxs]|hev[cx]|mif1|msf1|avif)");
  }

  private static PictureFile single(byte[] content, PictureHeader header)
      throws UnreadableException {
    header.refuseUnlessReasonable();
    return new SinglePicture(content, header);
  }
}
