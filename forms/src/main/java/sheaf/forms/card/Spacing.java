package sheaf.forms.card;

import java.util.List;

/**
 * How much room the parts of a card are given.
 *
 * @param picture height of the pair sheet's picture as a share of the page
 * @param verdict size of the verdict's letters in points
 * @param gathered whether measures that nobody took are set apart, more of them in a row
 * @param beside whether a short list stands beside another, or beside what is said of blanks
 * @param runOn whether who and when at the head run on in one line rather than stand in lines of
 *     their own
 */
record Spacing(double picture, double verdict, boolean gathered, boolean beside, boolean runOn) {

  /** The best-looking first. */
  static final List<Spacing> LOOSEST_FIRST =
      List.of(
          new Spacing(0.24, 12, false, false, false),
          new Spacing(0.2, 12, false, false, false),
          new Spacing(0.2, 12, false, true, false),
          new Spacing(0.16, 12, false, true, false),
          new Spacing(0.2, 12, true, true, false),
          new Spacing(0.16, 12, true, true, false),
          new Spacing(0.16, 12, true, true, true),
          new Spacing(0.16, 11, true, true, true),
          new Spacing(0.16, 11, true, false, true),
          new Spacing(0.14, 10.5, true, true, true));
}
