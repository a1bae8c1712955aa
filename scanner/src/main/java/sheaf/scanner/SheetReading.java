package sheaf.scanner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.scanner.field.FieldReader;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.HoleReader;
import sheaf.scanner.hole.SlitLine;
import sheaf.scanner.sheet.HiddenPrint;
import sheaf.scanner.sheet.SheetInPicture;

/**
 * From a flat sheet to its reading: holes, fields, and what one says against the other.
 *
 * @param page what it said
 * @param slits of the holes, for the proof
 */
record SheetReading(PageReading page, List<SlitLine> slits) {

  static SheetReading of(String source, SheetInPicture sheet) {
    List<Reason> reasons = new ArrayList<>();
    sheet.printScale().flatMap(PrintSize::worthSaying).ifPresent(reasons::add);
    HiddenPrint.doubt(sheet.flat(), sheet.layout()).ifPresent(reasons::add);
    FieldReader boxes = FieldReader.measure(sheet.flat(), sheet.layout());
    ArrowsShot shot = ArrowsShot.of(boxes.read(List.of()).readings(), sheet.layout());
    HoleReader.Holes holes = HoleReader.read(sheet.flat(), sheet.layout(), shot);
    reasons.addAll(holes.doubts());
    FieldReader.Fields fields = boxes.read(holes.torn());
    reasons.addAll(fields.doubts());
    reasons.addAll(ArrowCount.against(holes.found(), shot));
    PageReading page =
        new PageReading(
            source,
            reasons,
            Optional.of(sheet.code()),
            OptionalDouble.of(sheet.flat().sourcePixelsPerMm()),
            sheet.printScale(),
            holes.found(),
            fields.readings());
    return new SheetReading(page, holes.slits());
  }
}
