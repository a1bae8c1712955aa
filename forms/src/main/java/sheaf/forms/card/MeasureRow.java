package sheaf.forms.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** A line of the table of measures: two measures beside each other, as left or as found too. */
final class MeasureRow implements Block {

  private static final double SIZE = 8;
  private static final double SMALL = 7;

  /** Room for "29 15/16 in" and the like, and for how it was taken, in millimetres. */
  private static final double VALUE = 15.5;

  private static final double HOW = 13.5;

  /** Length of the line on which a missing measure can be written, in millimetres. */
  private static final double BLANK = 13.5;

  private static final double GUTTER = 4;
  private static final double GAP = 1.5;

  /** High enough to write on a blank line by hand. */
  private static final double ROW = 4.7;

  private static final double BASELINE = 3.2;

  private final OnePart table;
  private final List<Measure> measures;
  private final boolean asFound;

  private MeasureRow(OnePart table, List<Measure> measures, boolean asFound) {
    this.table = table;
    this.measures = measures;
    this.asFound = asFound;
  }

  /**
   * All lines of the table.
   *
   * @param gathered whether measures that nobody took stand behind the others, closer together
   * @param width of the card's inside in millimetres
   */
  static List<Block> table(
      List<Measure> measures, boolean asFound, boolean gathered, double width) {
    Predicate<Measure> blank =
        measure -> measure.left().isEmpty() && (!asFound || measure.found().isEmpty());
    List<Measure> told = gathered ? measures.stream().filter(blank.negate()).toList() : measures;
    OnePart table = new OnePart("Table");
    List<Block> rows = new ArrayList<>();
    if (!told.isEmpty()) {
      rows.add(new Columns(table, asFound));
    }
    for (int i = 0; i < told.size(); i += 2) {
      List<Measure> row = told.subList(i, Math.min(i + 2, told.size()));
      rows.add(new MeasureRow(table, row, asFound));
    }
    if (gathered) {
      List<Measure> untold = measures.stream().filter(blank).toList();
      rows.addAll(BlankRow.rows(table, untold, asFound ? 4 : 2, width));
    }
    return rows;
  }

  @Override
  public double height(Typeface typeface, double width) {
    double highest = ROW;
    for (Measure measure : measures) {
      double label = labelWidth(typeface, measure, own(width));
      String words = typeface.breakable(measure.label(), label, Weight.REGULAR, SIZE);
      double lines = typeface.heightOf(words, label, Weight.REGULAR, SIZE);
      highest = Math.max(highest, lines + 1.4);
      for (Taken taken : shown(measure)) {
        String value = typeface.breakable(CardWords.value(taken), VALUE, Weight.BOLD, SIZE);
        highest = Math.max(highest, typeface.heightOf(value, VALUE, Weight.BOLD, SIZE) + 1.4);
      }
    }
    return highest;
  }

  private List<Taken> shown(Measure measure) {
    List<Taken> shown = new ArrayList<>();
    measure.left().ifPresent(shown::add);
    measure.found().filter(found -> asFound).ifPresent(shown::add);
    return shown;
  }

  /** Room that one measure has: half of the line. */
  private static double own(double width) {
    return (width - GUTTER) / 2;
  }

  /** What the columns leave; a short value as left leaves more. */
  private double labelWidth(Typeface typeface, Measure measure, double own) {
    if (asFound) {
      return own - 2 * (VALUE + HOW) - GAP;
    }
    double value =
        measure
            .left()
            .map(left -> typeface.width(CardWords.value(left), Weight.BOLD, SIZE))
            .orElse(BLANK);
    return own - Math.min(value, VALUE) - HOW - GAP;
  }

  @Override
  public boolean continuesASection() {
    return true;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    for (int i = 0; i < measures.size(); i++) {
      double x = room.x() + i * (own(room.width()) + GUTTER);
      MmRect own = new MmRect(x, room.y(), own(room.width()), room.height());
      measure(pen, table.in(document).add("TR"), measures.get(i), own);
    }
  }

  private void measure(TaggedPen pen, Part row, Measure measure, MmRect room) throws IOException {
    double label = labelWidth(pen.typeface(), measure, room.width());
    MmRect words = new MmRect(room.x(), room.y() + 0.8, label, room.height() - 0.8);
    pen.text(row.addRowHeading(), measure.label(), words, Weight.REGULAR, SIZE, Align.LEFT);
    double x = room.right() - VALUE - HOW;
    if (asFound) {
      double found = x - VALUE - HOW;
      answer(pen, row, measure.found(), new MmRect(found, room.y(), VALUE + HOW, room.height()));
    }
    answer(pen, row, measure.left(), new MmRect(x, room.y(), VALUE + HOW, room.height()));
  }

  private static void answer(TaggedPen pen, Part row, Optional<Taken> taken, MmRect room)
      throws IOException {
    Part value = row.add("TD");
    Part how = row.add("TD");
    MmRect number = new MmRect(room.x(), room.y() + 0.8, VALUE, room.height() - 0.8);
    MmRect beside =
        new MmRect(room.x() + VALUE + GAP, room.y() + 1.1, HOW - GAP, room.height() - 1.1);
    if (taken.isEmpty()) {
      double y = room.y() + BASELINE + 0.6;
      pen.decoration(
          p -> {
            p.width(0.25);
            p.line(new MmPoint(number.right() - BLANK, y), new MmPoint(number.right(), y));
          });
      return;
    }
    pen.text(value, CardWords.value(taken.get()), number, Weight.BOLD, SIZE, Align.RIGHT);
    pen.text(how, taken.get().how().spoken(), beside, Weight.REGULAR, SMALL, Align.LEFT);
  }

  /** The names of the columns. */
  private record Columns(OnePart table, boolean asFound) implements Block {

    private static final double CAPTIONS = 3.6;
    private static final String FOUND = "as found";
    private static final String LEFT = "as left";
    private static final String TAKEN = "how taken";

    @Override
    public double height(Typeface typeface, double width) {
      return CAPTIONS;
    }

    @Override
    public boolean staysWithTheNext() {
      return true;
    }

    @Override
    public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
      Part row = table.in(document).add("TR");
      row.addColumnHeading();
      double last = room.right() - VALUE - HOW;
      double first = last - own(room.width()) - GUTTER;
      if (asFound) {
        column(pen, row, FOUND, first - VALUE - HOW, room);
      }
      column(pen, row, LEFT, first, room);
      if (asFound) {
        again(pen, FOUND, last - VALUE - HOW, room);
      }
      again(pen, LEFT, last, room);
    }

    /** The same words over the second half of the lines, for the eye only. */
    private static void again(TaggedPen pen, String name, double x, MmRect room)
        throws IOException {
      pen.decoration(
          p -> {
            p.block(name, value(x, room), Weight.REGULAR, SMALL, Align.RIGHT);
            p.block(TAKEN, how(x, room), Weight.REGULAR, SMALL, Align.LEFT);
          });
    }

    private static void column(TaggedPen pen, Part row, String name, double x, MmRect room)
        throws IOException {
      pen.text(row.addColumnHeading(), name, value(x, room), Weight.REGULAR, SMALL, Align.RIGHT);
      pen.text(row.addColumnHeading(), TAKEN, how(x, room), Weight.REGULAR, SMALL, Align.LEFT);
    }

    private static MmRect value(double x, MmRect room) {
      return new MmRect(x, room.y(), VALUE, room.height());
    }

    private static MmRect how(double x, MmRect room) {
      return new MmRect(x + VALUE + GAP, room.y(), HOW - GAP, room.height());
    }
  }
}
