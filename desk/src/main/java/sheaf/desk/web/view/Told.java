package sheaf.desk.web.view;

import java.util.List;

/**
 * How one value came to be.
 *
 * @param label what a person calls the field
 * @param values what it held, the earliest first, each with when and by whom
 */
public record Told(String label, List<String> values) {

  /** Copies the list. */
  public Told {
    values = List.copyOf(values);
  }
}
