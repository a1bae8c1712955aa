package sheaf.desk.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.AbstractList;
import java.util.List;
import sheaf.core.reading.PageReading;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;

/** A process of its own that files sheets until it is killed; for tests that kill it. */
final class FilingProcess {

  private FilingProcess() {}

  /**
   * Files sheets.
   *
   * @param args the home folder, and {@code endless} to say each number when it is filed or {@code
   *     halt} to die in the middle of the first
   */
  public static void main(String[] args) {
    try (Store store = Store.open(new HomeFolder(Path.of(args[0])), Clock.systemUTC())) {
      for (int number = 1; number <= 999; number++) {
        PageReading page = Pages.pair(Pages.JOB, number, number / 10.0, 0);
        List<PageReading> pages = args[1].equals("halt") ? haltingAfter(page) : List.of(page);
        store.file("scan.jpg", content(number), pages, "0.1.0");
        System.out.println(number);
        System.out.flush();
      }
    }
  }

  static byte[] content(int number) {
    return ("scan " + number).repeat(10_000).getBytes(StandardCharsets.UTF_8);
  }

  /** Two pages; whoever asks for the second while the first is being added dies on the spot. */
  private static List<PageReading> haltingAfter(PageReading first) {
    return new AbstractList<>() {
      @Override
      public PageReading get(int index) {
        if (index == 1) {
          Runtime.getRuntime().halt(9);
        }
        return first;
      }

      @Override
      public int size() {
        return 2;
      }
    };
  }
}
