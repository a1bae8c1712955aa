package sheaf.desk.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import sheaf.core.reading.PageReading;
import sheaf.desk.intake.Intake;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.web.http.Uploads.Uploaded;

/** Reads what was sent, a few files at a time however many come, so that memory stays bounded. */
final class Taking {

  private final Works works;
  private final Stores stores;
  private final Semaphore hands;

  /**
   * Takes in by so many hands.
   *
   * @param hands that read at a time
   */
  Taking(Works works, Stores stores, Semaphore hands) {
    this.works = works;
    this.stores = stores;
    this.hands = hands;
  }

  /** What each page of a file said, after it was filed. */
  List<PageReading> take(Uploaded file) {
    hands.acquireUninterruptibly();
    try {
      byte[] content = Files.readAllBytes(file.content());
      List<PageReading> pages = new ArrayList<>();
      return stores.with(
          store -> {
            new Intake(works.reader(), works.program(), store, Optional.empty())
                .take(Path.of(file.name()), content, pages::add);
            return pages;
          });
    } catch (IOException e) {
      throw Trouble.cannotRead("What was sent", e);
    } finally {
      hands.release();
    }
  }
}
