package sheaf.desk.store;

import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;

/** Adds what the pages of a kept file said. */
final class PageFiling {

  private PageFiling() {}

  /**
   * Adds them.
   *
   * @return whether any page said something that was not known
   */
  static boolean add(
      Session session, Change change, String digest, String name, List<PageReading> pages)
      throws SQLException {
    Set<JobId> jobs = new HashSet<>();
    pages.forEach(page -> page.sheet().map(SheetCode::job).ifPresent(jobs::add));
    session.open(change, jobs);
    boolean changed = false;
    for (int i = 0; i < pages.size(); i++) {
      String source = pages.size() == 1 ? name : name + "#" + (i + 1);
      changed |= change.reading(digest, i + 1, pages.get(i).from(source));
    }
    if (changed) {
      change.overviews(jobs);
    }
    return changed;
  }
}
