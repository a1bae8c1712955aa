package sheaf.core.reading;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.job.SheetCode;

/**
 * What one page said.
 *
 * @param source the file, and the page within it: {@code scan.pdf#3}
 * @param reasons what is doubtful, wrong or worth saying
 * @param sheet what the page's code says; empty when it could not be known
 * @param pixelsPerMm resolution of the picture on the sheet
 * @param printScale how large it was printed; empty where that cannot be known, as from a photo
 * @param holes every hole found
 * @param tears what was found in the zones of a tear sheet, by zone
 * @param fields every field of the sheet, blank ones too
 * @param linesWithin how well the sheet was flattened: nine in ten places on its printed lines lie
 *     within this of where they should be, in millimetres, as held against lines that flattening
 *     had not used; empty where too little of them is seen to tell
 * @param note what is written freely on it; empty when nothing is
 */
public record PageReading(
    String source,
    List<Reason> reasons,
    Optional<SheetCode> sheet,
    OptionalDouble pixelsPerMm,
    Optional<PrintScale> printScale,
    List<Hole> holes,
    List<TearReading> tears,
    List<FieldReading> fields,
    OptionalDouble linesWithin,
    Optional<NotePicture> note) {

  /** Copies the lists. */
  public PageReading {
    reasons = List.copyOf(reasons);
    holes = List.copyOf(holes);
    tears = List.copyOf(tears);
    fields = List.copyOf(fields);
  }

  /** A page without a note. */
  public PageReading(
      String source,
      List<Reason> reasons,
      Optional<SheetCode> sheet,
      OptionalDouble pixelsPerMm,
      Optional<PrintScale> printScale,
      List<Hole> holes,
      List<TearReading> tears,
      List<FieldReading> fields,
      OptionalDouble linesWithin) {
    this(
        source,
        reasons,
        sheet,
        pixelsPerMm,
        printScale,
        holes,
        tears,
        fields,
        linesWithin,
        Optional.empty());
  }

  /** A page without tears of which nobody measured how well it was flattened. */
  public PageReading(
      String source,
      List<Reason> reasons,
      Optional<SheetCode> sheet,
      OptionalDouble pixelsPerMm,
      Optional<PrintScale> printScale,
      List<Hole> holes,
      List<FieldReading> fields) {
    this(
        source,
        reasons,
        sheet,
        pixelsPerMm,
        printScale,
        holes,
        List.of(),
        fields,
        OptionalDouble.empty());
  }

  /** A page that could not be read. */
  public static PageReading refused(String source, Reason reason) {
    return new PageReading(
        source,
        List.of(reason),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** How the reading ended: as its worst reason says. */
  public ReadingState state() {
    return reasons.stream()
        .map(reason -> reason.code().ending())
        .max(Comparator.naturalOrder())
        .orElse(ReadingState.READ);
  }

  /** A field's reading; empty when the sheet has no such field. */
  public Optional<FieldReading> field(String key) {
    return fields.stream().filter(field -> field.key().equals(key)).findFirst();
  }

  /** The same page, of which something else is said. */
  public PageReading saying(
      List<Reason> newReasons,
      List<Hole> newHoles,
      List<TearReading> newTears,
      List<FieldReading> newFields) {
    return new PageReading(
        source,
        newReasons,
        sheet,
        pixelsPerMm,
        printScale,
        newHoles,
        newTears,
        newFields,
        linesWithin,
        note);
  }

  /** The same reading under another source name. */
  public PageReading from(String newSource) {
    return new PageReading(
        newSource,
        reasons,
        sheet,
        pixelsPerMm,
        printScale,
        holes,
        tears,
        fields,
        linesWithin,
        note);
  }
}
