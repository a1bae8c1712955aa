package sheaf.desk.report;

import java.util.Arrays;
import sheaf.core.page.MmPoint;

/**
 * A small picture of places on a target, made of letters: a letter is as wide as it says and twice
 * as high, as on most terminals. The spot that was aimed at is in the middle.
 */
final class ShotPicture {

  /** Letters to either side of the spot. */
  private static final int ASIDE = 20;

  private static final int UPRIGHT = 7;

  /** Widths of a letter to choose from, in millimetres. */
  private static final int[] WIDTHS = {1, 2, 5, 10, 20, 50};

  private final char[][] letters = new char[2 * UPRIGHT + 1][2 * ASIDE + 1];
  private final int widthMm;

  /**
   * An empty picture.
   *
   * @param farthestRight the most millimetres that anything lies right or left of the spot
   * @param farthestDown the same, down or up
   */
  ShotPicture(double farthestRight, double farthestDown) {
    for (char[] line : letters) {
      Arrays.fill(line, ' ');
    }
    double needed = Math.max(farthestRight / ASIDE, farthestDown / (2 * UPRIGHT));
    this.widthMm = Arrays.stream(WIDTHS).filter(w -> w >= needed).findFirst().orElse(100);
    mark(new MmPoint(0, 0), '+');
  }

  /** Puts a letter where something is; what lies beyond the edge is put on it. */
  void mark(MmPoint place, char letter) {
    int column = ASIDE + clamped(place.x() / widthMm, ASIDE);
    int line = UPRIGHT + clamped(place.y() / (2.0 * widthMm), UPRIGHT);
    letters[line][column] = letter;
  }

  private static int clamped(double letters, int most) {
    return (int) Math.max(-most, Math.min(most, Math.round(letters)));
  }

  /** How many millimetres a letter is wide. */
  int widthMm() {
    return widthMm;
  }

  /**
   * The picture in a frame, without the empty lines above and below what it shows.
   *
   * @param indent before each line
   */
  String text(String indent) {
    int first = 0;
    int last = letters.length - 1;
    while (isBlank(letters[first])) {
      first++;
    }
    while (isBlank(letters[last])) {
      last--;
    }
    String edge = indent + "+" + "-".repeat(2 * ASIDE + 1) + "+\n";
    StringBuilder text = new StringBuilder(edge);
    for (int i = first; i <= last; i++) {
      text.append(indent).append('|').append(letters[i]).append("|\n");
    }
    return text.append(edge).toString();
  }

  private static boolean isBlank(char[] line) {
    return new String(line).isBlank();
  }
}
