package sheaf.desk.web.view;

import java.util.List;
import sheaf.core.picture.Picture;

/**
 * A result with its picture.
 *
 * @param heading such as {@code Pair sheet 4 at 20 yd}
 * @param sentences what it came to
 * @param pictures of it; may be none
 */
public record Shown(String heading, List<String> sentences, List<Picture> pictures) {

  /** Copies the lists. */
  public Shown {
    sentences = List.copyOf(sentences);
    pictures = List.copyOf(pictures);
  }
}
