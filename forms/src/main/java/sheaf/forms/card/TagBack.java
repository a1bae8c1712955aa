package sheaf.forms.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** The back of a wallet tag: the measures as left in two columns, as many as there is room for. */
final class TagBack {

  private static final double SIZE = 7;
  private static final double ROW = 3.5;
  private static final double GUTTER = 3;

  /** The most room that a value gets, and the length of a blank's line, in millimetres. */
  private static final double VALUE = 24;

  private static final double BLANK = 11;
  private static final String LEGEND =
      "r read from paper, ? the same but unsure, t typed, c confirmed. An empty line: not measured.";

  private TagBack() {}

  static void draw(TaggedPen pen, Part document, BowRecord record, MmRect room) throws IOException {
    Visit visit = record.last();
    String day = visit.day().map(d -> ", " + CardWords.date(d)).orElse("");
    double y = room.y() - 1;
    y += text(pen, document, "As left" + day, room, y, Weight.BOLD) + 0.4;
    double legend = 2 * Typeface.lineHeight(SIZE);
    int rows = (int) ((room.bottom() + 1 - legend - y) / ROW);
    List<Measure> shown = shown(visit.measures(), 2 * rows);
    int used = (shown.size() + 1) / 2;
    Part table = document.add("Table");
    double half = (room.width() - GUTTER) / 2;
    for (int i = 0; i < shown.size(); i++) {
      double x = i < used ? room.x() : room.x() + half + GUTTER;
      MmRect own = new MmRect(x, y + i % used * ROW, half, ROW);
      measure(pen, table.add("TR"), shown.get(i), own);
    }
    int left = visit.measures().size() - shown.size();
    String more = left > 0 ? left + " more on the card. " : "";
    text(pen, document, more + LEGEND, room, room.bottom() + 1 - legend, Weight.REGULAR);
  }

  /** All of them, or without the blank ones, or as many of those as there is room for. */
  private static List<Measure> shown(List<Measure> measures, int most) {
    List<Measure> shown = new ArrayList<>(measures);
    if (shown.size() > most) {
      shown.removeIf(measure -> measure.left().isEmpty());
    }
    return shown.subList(0, Math.min(most, shown.size()));
  }

  private static double text(
      TaggedPen pen, Part document, String text, MmRect room, double y, Weight weight)
      throws IOException {
    MmRect at = new MmRect(room.x(), y, room.width(), 20);
    return pen.text(document.add("P"), text, at, weight, SIZE, Align.LEFT);
  }

  private static void measure(TaggedPen pen, Part row, Measure measure, MmRect room)
      throws IOException {
    Typeface typeface = pen.typeface();
    Optional<String> left =
        measure.left().map(taken -> shortened(typeface, value(taken), VALUE, Weight.BOLD));
    double needed = left.map(text -> typeface.width(text, Weight.BOLD, SIZE) + 0.1).orElse(BLANK);
    MmRect label = new MmRect(room.x(), room.y(), room.width() - needed - 1, room.height());
    String words = shortened(typeface, measure.label(), label.width(), Weight.REGULAR);
    pen.text(row.addRowHeading(), words, label, Weight.REGULAR, SIZE, Align.LEFT);
    MmRect value = new MmRect(room.right() - needed, room.y(), needed, room.height());
    Part cell = row.add("TD");
    if (left.isPresent()) {
      pen.text(cell, left.get(), value, Weight.BOLD, SIZE, Align.RIGHT);
    } else {
      double y = room.y() + 2.9;
      pen.decoration(
          p -> {
            p.width(0.25);
            p.line(new MmPoint(value.x(), y), new MmPoint(value.right(), y));
          });
    }
  }

  /** On one line, so that a cut value is seen to be one. */
  private static String shortened(Typeface typeface, String text, double width, Weight weight) {
    String whole = text.replace(' ', '\u00a0');
    String shown = whole;
    int end = whole.length();
    while (end > 1 && typeface.width(shown, weight, SIZE) > width) {
      end = whole.offsetByCodePoints(end, -1);
      shown = whole.substring(0, end) + "…";
    }
    return shown;
  }

  private static String value(Taken taken) {
    String sign =
        switch (taken.how()) {
          case READ -> " r";
          case DOUBTFUL -> " ?";
          case WRITTEN -> "";
          case TYPED -> " t";
          case CONFIRMED -> " c";
        };
    return CardWords.value(taken) + sign;
  }
}
