package sheaf.desk.web.view;

import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * A question that a person is asked.
 *
 * @param job its id as it is read out
 * @param sheet its number
 * @param kind of the sheet
 * @param key tells this question from all others of the sheet
 * @param words the question
 * @param look what must be seen of the sheet; empty for all of it
 * @param page the whole sheet
 * @param marks places that are asked about
 * @param offer what accepting means; empty where there is nothing to accept
 * @param choices other answers to tap
 * @param typed whether a number can be typed
 */
public record Doubt(
    String job,
    int sheet,
    String kind,
    String key,
    String words,
    Optional<MmRect> look,
    MmRect page,
    List<MmPoint> marks,
    String offer,
    List<Choice> choices,
    boolean typed) {

  /** Copies the lists. */
  public Doubt {
    marks = List.copyOf(marks);
    choices = List.copyOf(choices);
  }

  /** What is seen: the place asked about, or the whole sheet. */
  public MmRect seen() {
    return look.orElse(page);
  }

  /**
   * An answer to tap.
   *
   * @param value as it is understood
   * @param label as a person says it
   */
  public record Choice(String value, String label) {}
}
