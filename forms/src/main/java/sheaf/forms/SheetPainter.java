package sheaf.forms;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.layout.Layout;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Mm;
import sheaf.forms.draw.Pen;
import sheaf.forms.draw.QrSymbol;

/** Draws a layout: once what all its sheets share, then what only one sheet bears. */
final class SheetPainter {

  /** Light enough that a scan tells it from a pen, dark enough for a worn printer. */
  private static final Color LIGHT = new Color(158, 158, 158);

  private static final String JOB = "{job}";
  private static final String SHEET = "{sheet}";
  private static final Pattern LAST = Pattern.compile("\\{last:(\\w+)}");

  /** Stands where a record has no last value, so that the place is seen to be empty on purpose. */
  static final String NOT_KNOWN = "\u2013";

  /** In points; smaller letters are lost on a worn printer. */
  private static final double LEAST_SIZE = 7;

  /** Size of a digit in a box in points: 5 mm high, as people write. */
  private static final double DIGIT = 20;

  /** Height of the typeface's digits, in letter sizes. */
  private static final double DIGIT_HEIGHT = 0.72;

  private SheetPainter() {}

  /** All that does not depend on the job. */
  static void shared(Layout layout, Pen pen) throws IOException {
    pen.colour(Color.BLACK);
    for (RegisterMark mark : layout.marks()) {
      pen.fill(blackCells(mark));
    }
    for (Ink ink : layout.ink()) {
      if (!isOwn(ink)) {
        ink(ink, pen);
      }
    }
  }

  /** The codes, the words that name the job or the sheet, and values that are known beforehand. */
  static void own(Layout layout, SheetCode code, SheetValues values, Pen pen) throws IOException {
    pen.colour(Color.BLACK);
    for (MmRect square : layout.codes()) {
      pen.fill(QrSymbol.onSheet(square, code.text()));
    }
    for (Ink ink : layout.ink()) {
      if (ink instanceof Ink.Label label && isOwn(label)) {
        String text = filledIn(label.text(), code, values.last());
        label(fitted(label, text, pen), text, pen);
      }
    }
    for (Field field : layout.fields()) {
      if (field instanceof Field.Number number && values.filledIn().containsKey(number.key())) {
        digits(number, values.filledIn().get(number.key()), pen);
      }
    }
  }

  /** A number as a person would write it: a digit a box, and no zeros before the first. */
  private static void digits(Field.Number number, int value, Pen pen) throws IOException {
    if (value >= 10 * number.digits().get(0).place()) {
      throw new IllegalArgumentException(value + " has more digits than " + number.label());
    }
    for (Field.Digit digit : number.digits()) {
      int place = (int) digit.place();
      if (value >= place) {
        String written = String.valueOf(value / place % 10);
        double x = digit.box().centre().x() - pen.widthOf(written, Weight.REGULAR, DIGIT) / 2;
        double baseline = digit.box().centre().y() + DIGIT_HEIGHT / 2 * DIGIT * Mm.PER_POINT;
        pen.text(written, x, baseline, Weight.REGULAR, DIGIT);
      }
    }
  }

  private static String filledIn(String text, SheetCode code, Map<String, String> last) {
    String named =
        text.replace(JOB, code.job().spoken()).replace(SHEET, String.valueOf(code.number()));
    return LAST.matcher(named)
        .replaceAll(key -> Matcher.quoteReplacement(last.getOrDefault(key.group(1), NOT_KNOWN)));
  }

  /** An id with many wide letters is set smaller rather than broken, but never unreadably small. */
  private static Ink.Label fitted(Ink.Label label, String text, Pen pen) {
    double needed = pen.widthOf(text, label.weight(), label.size());
    double fitting = label.size() * Math.min(1, label.rect().width() / needed * 0.999);
    double size = Math.max(fitting, Math.min(label.size(), LEAST_SIZE));
    return new Ink.Label(
        label.text(), label.rect(), size, label.weight(), label.align(), label.turned());
  }

  private static boolean isOwn(Ink ink) {
    return ink instanceof Ink.Label label
        && (label.text().contains(JOB)
            || label.text().contains(SHEET)
            || LAST.matcher(label.text()).find());
  }

  private static void ink(Ink ink, Pen pen) throws IOException {
    if (ink instanceof Ink.Stroke stroke) {
      tone(stroke.tone(), pen);
      pen.width(stroke.width());
      pen.line(stroke.from(), stroke.to());
    } else if (ink instanceof Ink.Box box) {
      tone(box.tone(), pen);
      pen.width(box.width());
      pen.outline(box.rect());
    } else if (ink instanceof Ink.Disc disc) {
      tone(Tone.BLACK, pen);
      pen.disc(disc.centre(), disc.radius());
    } else if (ink instanceof Ink.Ring ring) {
      tone(Tone.BLACK, pen);
      pen.width(ring.width());
      pen.ring(ring.centre(), ring.radius());
    } else if (ink instanceof Ink.Label label) {
      label(label, label.text(), pen);
    }
  }

  private static void label(Ink.Label label, String text, Pen pen) throws IOException {
    tone(Tone.BLACK, pen);
    MmRect rect = label.rect();
    if (label.turned()) {
      double baseline = rect.x() + label.size() * Mm.PER_POINT;
      pen.turned(text, baseline, rect.bottom(), label.weight(), label.size());
    } else {
      pen.block(text, rect, label.weight(), label.size(), label.align());
    }
  }

  private static void tone(Tone tone, Pen pen) throws IOException {
    pen.colour(tone == Tone.BLACK ? Color.BLACK : LIGHT);
  }

  /** The black cells of a mark, neighbours in a row joined. */
  private static List<MmRect> blackCells(RegisterMark mark) {
    List<MmRect> black = new ArrayList<>();
    double cell = mark.cell();
    for (int row = 0; row < RegisterMark.CELLS; row++) {
      int start = 0;
      for (int column = 0; column <= RegisterMark.CELLS; column++) {
        boolean white = column == RegisterMark.CELLS || mark.white(row, column);
        if (white && column > start) {
          black.add(
              new MmRect(
                  mark.square().x() + start * cell,
                  mark.square().y() + row * cell,
                  (column - start) * cell,
                  cell));
        }
        if (white) {
          start = column + 1;
        }
      }
    }
    return black;
  }
}
