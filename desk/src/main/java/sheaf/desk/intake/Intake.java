package sheaf.desk.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import sheaf.core.reading.PageReading;
import sheaf.desk.store.Store;
import sheaf.desk.store.Store.Filing;
import sheaf.scanner.SheetReader.Proof;

/**
 * Takes in files one by one.
 *
 * @param source reads them
 * @param version of what reads them, kept beside each reading
 * @param store keeps them
 * @param proofs where proof pictures go, if they are wanted
 */
public record Intake(PageSource source, String version, Store store, Optional<ProofFolder> proofs) {

  /** Begins to read a file; several may be read at a time. */
  public Begun begin(Path file, byte[] content) {
    return new Begun(file, content, source, proofs.isPresent() ? Proof.DRAW : Proof.SKIP);
  }

  /**
   * Reads a file, hands over each page as it is read, and keeps the file with all its readings.
   *
   * @param file where it is from; named so in the results
   * @param content the file
   * @param each takes each page
   * @return what became of the file in the store
   */
  public Filing take(Path file, byte[] content, Consumer<PageReading> each) {
    return take(begin(file, content), each);
  }

  /** The same for a file that was begun before. */
  public Filing take(Begun begun, Consumer<PageReading> each) {
    List<PageReading> pages = new ArrayList<>();
    begun.pages(
        page -> {
          pages.add(page.reading());
          page.proof()
              .ifPresent(jpeg -> proofs.ifPresent(to -> to.write(page.reading().source(), jpeg)));
          each.accept(page.reading());
        });
    return store.file(begun.file().getFileName().toString(), begun.content(), pages, version);
  }
}
