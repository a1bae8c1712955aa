package sheaf.samples.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Digits and a few letters as a hand draws them: lines in a box one wide and one high. */
final class Strokes {

  /** Points as pairs of digits, 0 to 9 across and down; a blank lifts the pen. */
  private static final Map<Character, String> SHAPES =
      Map.ofEntries(
          Map.entry('0', "50 20 13 16 29 59 78 85 82 50"),
          Map.entry('1', "23 50 59"),
          Map.entry('2', "12 30 60 72 64 19 89"),
          Map.entry('3', "10 80 44 74 87 59 18"),
          Map.entry('4', "60 16 86/60 69"),
          Map.entry('5', "80 20 14 54 86 68 19"),
          Map.entry('6', "70 33 16 29 69 87 65 26"),
          Map.entry('7', "10 80 39"),
          Map.entry('8', "50 21 33 65 88 49 17 35 73 70 50"),
          Map.entry('9', "73 35 13 30 71 73 59"),
          Map.entry('+', "51 58/15 85"),
          Map.entry('-', "15 85"),
          Map.entry('x', "23 79/73 29"),
          Map.entry('/', "80 19"),
          Map.entry('R', "19 11 61 73 54 14 79"),
          Map.entry('L', "21 29 79"),
          Map.entry('y', "13 46/83 29"),
          Map.entry('d', "74 36 18 39 68 71 79"),
          Map.entry('t', "50 58 79/23 83"),
          Map.entry('o', "53 25 28 59 86 53"));

  private Strokes() {}

  /** The strokes of a character, each a list of places from 0 to 1; none for a blank. */
  static List<List<double[]>> of(char c) {
    List<List<double[]>> strokes = new ArrayList<>();
    String shape = SHAPES.getOrDefault(c, "");
    for (String stroke : shape.isEmpty() ? new String[0] : shape.split("/")) {
      List<double[]> points = new ArrayList<>();
      for (String point : stroke.split(" ")) {
        double x = Character.digit(point.charAt(0), 10) / 9.0;
        double y = Character.digit(point.charAt(1), 10) / 9.0;
        points.add(new double[] {x * 0.7, y});
      }
      strokes.add(points);
    }
    return strokes;
  }
}
