package sheaf.desk.doctor;

/**
 * What was found of one thing.
 *
 * @param what was looked at
 * @param grade how it is
 * @param words what it is, and what to do where it is not well
 */
public record Finding(String what, Grade grade, String words) {

  /** How something is. */
  public enum Grade {
    /** Well. */
    WELL("ok"),
    /** Worth a look; everything works. */
    LOOK("look"),
    /** Something does not work. */
    ILL("FAULT");

    private final String label;

    Grade(String label) {
      this.label = label;
    }

    /** What it is called in a list. */
    public String label() {
      return label;
    }
  }

  static Finding well(String what, String words) {
    return new Finding(what, Grade.WELL, words);
  }

  static Finding look(String what, String words) {
    return new Finding(what, Grade.LOOK, words);
  }

  static Finding ill(String what, String words) {
    return new Finding(what, Grade.ILL, words);
  }
}
