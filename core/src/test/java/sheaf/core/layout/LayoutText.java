package sheaf.core.layout;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A layout as text, one thing a line, for frozen copies. */
final class LayoutText {

  private LayoutText() {}

  static String of(Layout layout) {
    return Stream.of(
            Stream.of(layout.id(), layout.title(), layout.target()),
            layout.marks().stream(),
            layout.codes().stream(),
            layout.dots().stream(),
            layout.fields().stream(),
            layout.ink().stream())
        .flatMap(part -> part)
        .map(LayoutText::rounded)
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /** To a thousandth of a millimetre, so that the last bit of a sum does not matter. */
  private static String rounded(Object part) {
    return java.util.regex.Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?")
        .matcher(part.toString())
        .replaceAll(number -> String.format("%.3f", Double.parseDouble(number.group())));
  }
}
