package sheaf.desk.web.view;

/**
 * A hole on a sheet, as its page shows it.
 *
 * @param number to name it by on the page
 * @param x of its axis, in millimetres on the page as designed
 * @param y the same, downward
 * @param radius of the shaft, in millimetres
 * @param head field, broadhead or unknown
 * @param aim the dot that it was shot at: field, broadhead or shared
 */
public record HoleRow(int number, double x, double y, double radius, String head, String aim) {

  /** The head as people say it. */
  public String spoken() {
    return switch (head) {
      case "field" -> "field point";
      case "unknown" -> "head unknown";
      default -> head;
    };
  }
}
