package sheaf.core.reading;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

/** Digit boxes as people fill them in. */
final class Boxes {

  static final Layout FRONT = Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);
  static final Layout BACK = Layouts.current(Variant.BACK, Paper.LETTER, UnitSystem.INCHES);

  private Boxes() {}

  static Field.Number field(String key) {
    Layout layout = FRONT.fields().stream().anyMatch(f -> f.key().equals(key)) ? FRONT : BACK;
    return (Field.Number) layout.field(key);
  }

  /** A character for each box: a digit, a blank for nothing, x for what is no digit. */
  static List<InBox> boxes(String written, double confidence) {
    List<InBox> boxes = new ArrayList<>();
    for (char c : written.toCharArray()) {
      boxes.add(
          c == ' '
              ? new InBox.Blank()
              : c == 'x' ? new InBox.Unclear() : new InBox.Digit(c - '0', confidence));
    }
    return boxes;
  }
}
