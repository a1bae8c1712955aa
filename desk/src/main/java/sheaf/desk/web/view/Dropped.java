package sheaf.desk.web.view;

import java.util.List;

/**
 * What became of a file that was dropped.
 *
 * @param name of the file
 * @param pages one or more
 */
public record Dropped(String name, List<Page> pages) {

  /** Copies the list. */
  public Dropped {
    pages = List.copyOf(pages);
  }

  /**
   * What a page said.
   *
   * @param state read, check or refused
   * @param job its id as it is read out; empty when it names none
   * @param sheet its number; 0 when it names none
   * @param kind of sheet; empty when it names none
   * @param found on it, in a few words
   * @param answer what the sheet came to; sentences
   * @param next what to move next; empty where that is not told
   * @param doubts what is to be looked at, or why it was refused
   */
  public record Page(
      String state,
      String job,
      int sheet,
      String kind,
      String found,
      List<String> answer,
      String next,
      List<String> doubts) {}
}
