package sheaf.desk.intake;

import java.util.function.Consumer;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader.Proof;

/** Turns a file into readings of its pages, as {@link sheaf.scanner.SheetReader#read} does. */
@FunctionalInterface
public interface PageSource {

  /**
   * Reads every page of a file, in order.
   *
   * @param name what to call the file in the results
   * @param file its content
   * @param proof whether to draw proof pictures
   * @param pages takes each page as soon as it is read
   */
  void read(String name, byte[] file, Proof proof, Consumer<ReadPage> pages);
}
