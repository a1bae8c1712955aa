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
import sheaf.scanner.tear.TearReader;

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
    boolean zones = TearReader.reads(sheet.layout());
    TearReader.Tears tears =
        zones ? TearReader.read(sheet.flat(), sheet.layout()) : TearReader.Tears.NONE;
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
            holes.found(),
            tears.found(),
            fields.readings());
    return new SheetReading(page, holes.slits());
  }
}
