package sheaf.scanner.picture;

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
          ReasonCode.EMPTY_FILE, "The file is empty: wait for the scanner or copy it again.");
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
        "The file is no JPEG, PNG, TIFF or PDF: scan or photograph the sheet.");
  }

  private static PictureFile single(byte[] content, PictureHeader header)
      throws UnreadableException {
    header.refuseUnlessReasonable();
    return new SinglePicture(content, header);
  }
}
