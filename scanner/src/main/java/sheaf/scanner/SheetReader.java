package sheaf.scanner;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import sheaf.core.reading.NumberJudge;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.proof.ProofPicture;
import sheaf.scanner.sheet.SheetInPicture;

/** Reads scanned or photographed sheets. Safe to use from several threads. */
public final class SheetReader {

  /** Whether to draw a proof picture of each page. */
  public enum Proof {
    /** A picture for each page that shows a sheet. */
    DRAW,
    /** No pictures. */
    SKIP
  }

  private final double sure;

  /** A reader that takes numbers for read as usual; the first one loads the native libraries. */
  public SheetReader() {
    this(NumberJudge.USUALLY_SURE);
  }

  /**
   * A reader; the first one loads the native libraries.
   *
   * @param sure numbers at least this sure need nobody's look, 0 to 1
   */
  public SheetReader(double sure) {
    this.sure = sure;
    NativeLibraries.load();
  }

  /**
   * Reads every page of a file on all processors; each is handed over as soon as it and those
   * before it are read.
   *
   * <p>A file or page that cannot be read is an ordinary result: a refused page with its reason.
   *
   * @param name what to call the file in the results; a page of several gets {@code #} and its
   *     number from 1
   * @param file its content: JPEG, PNG, TIFF or PDF
   * @param proof whether to draw proof pictures
   * @param pages takes each page, in order, on the thread that calls
   */
  public void read(String name, byte[] file, Proof proof, Consumer<ReadPage> pages) {
    try (PictureFile pictures = PictureFile.open(file)) {
      int count = pictures.pages();
      PagesInOrder.read(
          count,
          i -> {
            String source = count == 1 ? name : name + "#" + (i + 1);
            return orRefused(source, () -> page(source, pictures, i, proof));
          },
          pages);
    } catch (UnreadableException e) {
      pages.accept(refused(name, e.reason()));
    }
  }

  /** A fault of the reader's own costs the page it happens at, and no other. */
  static ReadPage orRefused(String source, Supplier<ReadPage> page) {
    try {
      return page.get();
    } catch (RuntimeException e) {
      StackTraceElement[] trace = e.getStackTrace();
      String where = trace.length == 0 ? "" : " at " + trace[0];
      Reason fault =
          Reason.of(
              ReasonCode.READER_FAULT,
              "Sheaf failed at this page by a fault of its own (%s%s): take another picture of it, and report the fault with this one."
                  .formatted(e.getClass().getSimpleName(), where));
      return refused(source, fault);
    }
  }

  private ReadPage page(String source, PictureFile pictures, int index, Proof proof) {
    try (Picture picture = decoded(pictures, index);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      SheetReading reading = SheetReading.of(source, sheet, sure);
      return new ReadPage(
          reading.page(),
          proof == Proof.DRAW
              ? Optional.of(
                  ProofPicture.jpeg(sheet.flat(), sheet.layout(), reading.page(), reading.slits()))
              : Optional.empty());
    } catch (UnreadableException e) {
      return refused(source, e.reason());
    }
  }

  /** A file is decoded by one thread at a time; the work that follows takes ten times as long. */
  private static Picture decoded(PictureFile pictures, int index) throws UnreadableException {
    synchronized (pictures) {
      return pictures.page(index);
    }
  }

  private static ReadPage refused(String source, Reason why) {
    return new ReadPage(PageReading.refused(source, why), Optional.empty());
  }
}
