package sheaf.core.layout;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import sheaf.core.page.Paper;

/**
 * The name of one layout.
 *
 * @param variant which form of which kind of sheet
 * @param paper the paper it is drawn for
 * @param units the units it asks for
 * @param version 1 for the first release; a released version never changes
 */
public record LayoutId(Variant variant, Paper paper, UnitSystem units, int version) {

  private static final int MAX_VERSION = 99;

  /** Throws when the version is out of range. */
  public LayoutId {
    if (version < 1 || version > MAX_VERSION) {
      throw new IllegalArgumentException("a layout's version must be 1 to 99, not " + version);
    }
  }

  /** The kind of sheet. */
  public SheetKind kind() {
    return variant.kind();
  }

  /** The form used inside a sheet's code: kind, variant, paper, units, version; {@code P2LI1}. */
  public String code() {
    return "" + kind().letter() + variant.letter() + paper.letter() + units.letter() + version;
  }

  /** Reads {@link #code()}; empty when any part is unknown. Says nothing of whether it exists. */
  public static Optional<LayoutId> parse(String code) {
    if (!code.matches("[A-Z][0-9A-Z][0-9A-Z][A-Z][1-9][0-9]?")) {
      return Optional.empty();
    }
    Optional<Variant> variant =
        Arrays.stream(Variant.values())
            .filter(v -> v.kind().letter() == code.charAt(0) && v.letter() == code.charAt(1))
            .findFirst();
    Optional<Paper> paper = byLetter(Paper.values(), Paper::letter, code.charAt(2));
    Optional<UnitSystem> units = byLetter(UnitSystem.values(), UnitSystem::letter, code.charAt(3));
    int version = Integer.parseInt(code.substring(4));
    return variant.flatMap(v -> paper.flatMap(p -> units.map(u -> new LayoutId(v, p, u, version))));
  }

  private static <T> Optional<T> byLetter(T[] all, ToIntFunction<T> letter, char wanted) {
    return Stream.of(all).filter(one -> letter.applyAsInt(one) == wanted).findFirst();
  }
}
