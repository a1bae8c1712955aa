package sheaf.scanner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.field.FieldReader;
import sheaf.scanner.field.NoteReader;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.HoleReader;
import sheaf.scanner.hole.SlitLine;
import sheaf.scanner.sheet.HiddenPrint;
import sheaf.scanner.sheet.SheetInPicture;
import sheaf.scanner.tear.TearReader;

/**
 * From a flat sheet to its reading: holes, fields, and what one says against the other.
 *
 * @param page what it said
 * @param slits of the holes, for the proof
 */
record SheetReading(PageReading page, List<SlitLine> slits) {

  /**
   * Nine in ten places on lines are this near to where they should be, in millimetres, or the page
   * is a doubt: as far off as a hole's own centre may be told at worst without one.
   */
  private static final double FLAT_ENOUGH = 0.7;

  static SheetReading of(String source, SheetInPicture sheet, double sure) {
    List<Reason> reasons = new ArrayList<>();
    sheet.printScale().flatMap(PrintSize::worthSaying).ifPresent(reasons::add);
    HiddenPrint.doubt(sheet.flat(), sheet.layout()).ifPresent(reasons::add);
    curl(sheet).ifPresent(reasons::add);
    FieldReader boxes = FieldReader.measure(sheet.flat(), sheet.layout(), sure);
    List<FieldReading> ticks = boxes.read(List.of()).readings();
    ArrowsShot shot = ArrowsShot.of(ticks, sheet.layout());
    boolean zones = TearReader.reads(sheet.layout());
    TearReader.Tears tears =
        zones ? TearReader.read(sheet.flat(), sheet.layout(), ticks) : TearReader.Tears.NONE;
    reasons.addAll(tears.doubts());
    reasons.addAll(TearTrial.doubts(tears.found(), sheet.code(), sheet.printScale()));
    HoleReader.Holes holes =
        zones ? HoleReader.Holes.NONE : HoleReader.read(sheet.flat(), sheet.layout(), shot);
    reasons.addAll(holes.doubts());
    FieldReader.Fields fields = boxes.read(zones ? tears.torn() : holes.torn());
    reasons.addAll(fields.doubts());
    reasons.addAll(ArrowCount.against(holes.found(), shot));
    PageReading page =
        new PageReading(
            source,
            reasons,
            Optional.of(sheet.code()),
            OptionalDouble.of(sheet.flat().sourcePixelsPerMm()),
            sheet.printScale(),
            holes.found().stream().map(hole -> hole.movedWithin(sheet.movedWithin())).toList(),
            tears.found(),
            fields.readings(),
            sheet.offLines(),
            NoteReader.read(sheet.flat(), sheet.layout()));
    return new SheetReading(page, holes.slits());
  }

  private static Optional<Reason> curl(SheetInPicture sheet) {
    OptionalDouble off = sheet.offLines();
    // On a scanner's glass the marks lie as a flat sheet's do, or it is taken for a photo.
    boolean onGlass = sheet.printScale().isPresent();
    if (onGlass || off.isPresent() && off.getAsDouble() <= FLAT_ENOUGH) {
      return Optional.empty();
    }
    String message =
        off.isEmpty()
            ? "Too few of the sheet's printed lines are seen to tell whether it lies flat: take a sharper picture of the whole sheet."
            : "The sheet is curled: places on it may be %.1f mm off. Press it flat or photograph it from straight above, and read it again."
                .formatted(off.getAsDouble());
    return Optional.of(Reason.of(ReasonCode.CURLED, message));
  }
}
