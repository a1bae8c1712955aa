package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Letters as a hand draws them; none that is like a digit. */
final class HandLetters {

  /** Places as pairs of digits, 0 to 9 across and down; a slash lifts the pen. */
  private static final List<String> SHAPES =
      List.of(
          "09 40 89/25 65",
          "80 00 09 89/04 64",
          "80 00 09/04 64",
          "00 09/80 89/04 84",
          "00 09/80 05/34 89",
          "09 10 45 80 89",
          "09 00 89 80",
          "09 00 60 82 64 04/34 89",
          "00 80/40 49",
          "00 29 43 69 80",
          "00 89/80 09",
          "05 65 52 23 06 19 58 77",
          "00 09/05 33 65 69",
          "09 03/04 22 44 49/45 63 84 89",
          "09 03/05 33 65 69",
          "00 49 80",
          "04 84/07 87",
          "04 84/40 48");

  private HandLetters() {}

  /** The strokes of some letter, each a list of places from 0 to 1. */
  static List<List<double[]>> draw(RandomGenerator random) {
    double unsteady = random.nextDouble(0.01, 0.05);
    List<List<double[]>> strokes = new ArrayList<>();
    for (String stroke : SHAPES.get(random.nextInt(SHAPES.size())).split("/")) {
      List<double[]> places = new ArrayList<>();
      for (String place : stroke.split(" ")) {
        double x = Character.digit(place.charAt(0), 10) / 9.0;
        double y = Character.digit(place.charAt(1), 10) / 9.0;
        places.add(
            new double[] {
              x + random.nextGaussian() * unsteady, y + random.nextGaussian() * unsteady
            });
      }
      strokes.add(places);
    }
    return strokes;
  }
}
