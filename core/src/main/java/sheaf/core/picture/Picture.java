package sheaf.core.picture;

import java.util.List;
import sheaf.core.page.MmRect;

/**
 * A picture.
 *
 * @param frame what it covers
 * @param words what it shows, for those who do not see it
 * @param shapes the first lowest
 */
public record Picture(MmRect frame, String words, List<Shape> shapes) {

  /** Copies the list. */
  public Picture {
    shapes = List.copyOf(shapes);
  }
}
