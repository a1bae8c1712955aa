package sheaf.scanner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.field.FieldReader;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.HoleReader;
import sheaf.scanner.sheet.SheetInPicture;

/** From a flat sheet to its reading: holes, fields, and what one says against the other. */
final class SheetReading {

  /** A print scale this far from 1 is worth telling the shop. */
  private static final double SCALE_WORTH_SAYING = 0.005;

  private SheetReading() {}

  static PageReading of(String source, SheetInPicture sheet) {
    List<Reason> reasons = new ArrayList<>(scale(sheet.printScale()));
    FieldReader boxes = FieldReader.measure(sheet.flat(), sheet.layout());
    ArrowsShot shot = ArrowsShot.of(boxes.read(List.of()).readings(), sheet.layout());
    HoleReader.Holes holes = HoleReader.read(sheet.flat(), sheet.layout(), shot);
    reasons.addAll(holes.doubts());
    FieldReader.Fields fields = boxes.read(holes.torn());
    reasons.addAll(fields.doubts());
    reasons.addAll(ArrowCount.against(holes.found(), shot));
    return new PageReading(
        source,
        reasons,
        Optional.of(sheet.code()),
        OptionalDouble.of(sheet.flat().sourcePixelsPerMm()),
        sheet.printScale(),
        holes.found(),
        fields.readings());
  }

  private static List<Reason> scale(Optional<PrintScale> scale) {
    return scale.filter(s -> Math.abs(s.mean() - 1) > SCALE_WORTH_SAYING).stream()
        .map(
            s ->
                Reason.of(
                    ReasonCode.PRINT_SCALE,
                    "The sheet was printed at %.1f %% of its size; the results are corrected for it. Print at 100 %%."
                        .formatted(100 * s.mean())))
        .toList();
  }
}
