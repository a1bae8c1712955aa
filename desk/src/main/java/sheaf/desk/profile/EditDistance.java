package sheaf.desk.profile;

import java.util.stream.IntStream;

/** How far apart two spellings are. */
final class EditDistance {

  private EditDistance() {}

  /**
   * The fewest characters to be put in, taken out or replaced that make one text the other.
   *
   * <p>R. A. Wagner, M. J. Fischer: The String-to-String Correction Problem, Journal of the ACM 21
   * (1974), with all costs one.
   */
  static int between(String a, String b) {
    int[] above = IntStream.rangeClosed(0, b.length()).toArray();
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
