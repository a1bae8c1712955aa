package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheaf.core.layout.Variant;

/**
 * How line sheets get their distances.
 *
 * @param variant with boxes for distances, or with distances of its own in print
 * @param numbers for the boxes, near to far; empty when a person writes them
 */
record LineDistances(Variant variant, List<Integer> numbers) {

  private static final String WRITTEN = "written";
  private static final String PRINTED = "printed";

  /** As many bands as a large sheet has. */
  private static final int MOST = 7;

  /** Copies the list. */
  LineDistances {
    numbers = List.copyOf(numbers);
  }

  /** Reads the option: one of two words, or numbers. */
  static final class Reader implements ITypeConverter<LineDistances>, Iterable<String> {

    @Override
    public LineDistances convert(String typed) {
      return switch (typed.toLowerCase(Locale.ROOT)) {
        case WRITTEN -> new LineDistances(Variant.OPEN_DISTANCES, List.of());
        case PRINTED -> new LineDistances(Variant.SET_DISTANCES, List.of());
        default ->
            new LineDistances(
                Variant.OPEN_DISTANCES,
                numbers(typed)
                    .orElseThrow(
                        () ->
                            new TypeConversionException(
                                "'%s' is none of written, printed, or 1 to %d whole numbers up to 999 from near to far such as 3,5,10"
                                    .formatted(typed, MOST))));
      };
    }

    private static Optional<List<Integer>> numbers(String typed) {
      List<String> parts = Arrays.stream(typed.split(",", -1)).map(String::strip).toList();
      if (parts.size() > MOST || !parts.stream().allMatch(part -> part.matches("[1-9]\\d{0,2}"))) {
        return Optional.empty();
      }
      List<Integer> numbers = new ArrayList<>(parts.stream().map(Integer::valueOf).toList());
      boolean nearToFar = numbers.stream().sorted().distinct().toList().equals(numbers);
      return Optional.of(numbers).filter(list -> nearToFar);
    }

    @Override
    public Iterator<String> iterator() {
      return List.of(WRITTEN, PRINTED).iterator();
    }
  }
}
