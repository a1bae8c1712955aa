package sheaf.scanner.hole;

import java.util.Collection;
import java.util.Comparator;
import java.util.stream.IntStream;
import sheaf.scanner.sheet.FlatSheet;

/**
 * One archer's broadheads are alike, so all their holes together tell what each alone tells less
 * surely.
 *
 * @param count blades of a head, 2 to 4; 0 when there is no broadhead
 * @param cut the cutting diameter in millimetres
 */
record Blades(int count, double cut) {

  private static final Blades NONE = new Blades(0, 0);

  /** Of a sheet's broadheads. */
  static Blades of(Collection<FoundHole> broadheads) {
    if (broadheads.isEmpty()) {
      return NONE;
    }
    int count =
        IntStream.rangeClosed(HeadShape.FEWEST, HeadShape.MOST)
            .boxed()
            .max(Comparator.comparingDouble(blades -> telling(broadheads, blades)))
            .orElseThrow();
    double[] reaches =
        broadheads.stream()
            .mapToDouble(hole -> HeadShape.reach(hole.circle(), hole.ownLines(broadheads), count))
            .sorted()
            .toArray();
    return new Blades(count, 2 * reaches[reaches.length / 2] / FlatSheet.PIXELS_PER_MM);
  }

  private static double telling(Collection<FoundHole> broadheads, int blades) {
    return broadheads.stream()
        .mapToDouble(hole -> HeadShape.telling(hole.circle(), hole.ownLines(broadheads), blades))
        .sum();
  }
}
