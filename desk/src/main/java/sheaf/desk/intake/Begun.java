package sheaf.desk.intake;

import java.nio.file.Path;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.Consumer;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader.Proof;

/** A file that is being read while those before it are filed. */
public final class Begun {

  /** Pages that may wait to be taken; the reading stops beyond, so that memory stays bounded. */
  private static final int WAITING = 4;

  private final Path file;
  private final byte[] content;
  private final BlockingQueue<Item> items = new ArrayBlockingQueue<>(WAITING);
  private final Thread thread;

  /** What comes out of a reading: pages, then its end or what broke it off. */
  private sealed interface Item {
    record Page(ReadPage page) implements Item {}

    record Broken(Throwable why) implements Item {}

    record End() implements Item {}
  }

  /** Nobody wants the rest any more. */
  private static final class Abandoned extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  Begun(Path file, byte[] content, PageSource source, Proof proof) {
    this.file = file;
    this.content = content;
    this.thread = new Thread(() -> read(source, proof), "reads " + file.getFileName());
    thread.setDaemon(true);
    thread.start();
  }

  Path file() {
    return file;
  }

  byte[] content() {
    return content;
  }

  /** Stops reading: what is not taken by now never will be. */
  public void abandon() {
    thread.interrupt();
  }

  private void read(PageSource source, Proof proof) {
    try {
      source.read(file.toString(), content, proof, page -> put(new Item.Page(page)));
      put(new Item.End());
    } catch (Abandoned e) {
      // The way out of a reading that nobody waits for.
      return;
    } catch (RuntimeException | Error e) {
      put(new Item.Broken(e));
    }
  }

  private void put(Item item) {
    try {
      items.put(item);
    } catch (InterruptedException e) {
      throw new Abandoned();
    }
  }

  /** Hands over every page as it is read; throws what broke the reading off. */
  void pages(Consumer<ReadPage> each) {
    try {
      Item item = items.take();
      while (item instanceof Item.Page page) {
        each.accept(page.page());
        item = items.take();
      }
      if (item instanceof Item.Broken broken) {
        throw unchecked(broken.why());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading " + file, e);
    } finally {
      abandon();
    }
  }

  private static RuntimeException unchecked(Throwable why) {
    if (why instanceof Error error) {
      throw error;
    }
    return (RuntimeException) why;
  }
}
