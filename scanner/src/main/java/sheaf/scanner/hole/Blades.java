package sheaf.scanner.hole;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
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

  /** A hole and those of its lines that no other broadhead explains. */
  private record Own(Circle circle, List<Slit> lines) {}

  /** Of a sheet's broadheads. */
  static Blades of(Collection<FoundHole> broadheads) {
    if (broadheads.isEmpty()) {
      return NONE;
    }
    List<Own> holes =
        broadheads.stream().map(hole -> new Own(hole.circle(), hole.ownLines(broadheads))).toList();
    int count =
        IntStream.rangeClosed(HeadShape.FEWEST, HeadShape.MOST)
            .boxed()
            .max(Comparator.comparingDouble(blades -> telling(holes, blades)))
            .orElseThrow();
    double[] reaches =
        holes.stream()
            .mapToDouble(hole -> HeadShape.reach(hole.circle, hole.lines, count))
            .sorted()
            .toArray();
    return new Blades(count, 2 * reaches[reaches.length / 2] / FlatSheet.PIXELS_PER_MM);
  }

  private static double telling(List<Own> holes, int blades) {
    return holes.stream()
        .mapToDouble(hole -> HeadShape.telling(hole.circle, hole.lines, blades))
        .sum();
  }
}
