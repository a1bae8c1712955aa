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

  /**
   * Nine in ten places on lines are this near to where they should be, in millimetres, or the page
   * is a doubt: as far off as a hole's own centre may be told at worst without one.
   */
  private static final double FLAT_ENOUGH = 0.7;

  private SheetReading() {}

  static PageReading of(String source, SheetInPicture sheet) {
    List<Reason> reasons = new ArrayList<>(scale(sheet.printScale()));
    reasons.addAll(curl(sheet));
    FieldReader boxes = FieldReader.measure(sheet.flat(), sheet.layout());
    ArrowsShot shot = ArrowsShot.of(boxes.read(List.of()).readings());
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
        fields.readings(),
        sheet.offLines());
  }

  private static List<Reason> curl(SheetInPicture sheet) {
    OptionalDouble off = sheet.offLines();
    if (off.isPresent() && off.getAsDouble() <= FLAT_ENOUGH) {
      return List.of();
    }
    String message =
        off.isEmpty()
            ? "Too few of the sheet's printed lines are seen to tell whether it lies flat: take a sharper picture of the whole sheet."
            : "The sheet is curled: places on it may be %.1f mm off. Press it flat or photograph it from straight above, and read it again."
                .formatted(off.getAsDouble());
    return List.of(Reason.of(ReasonCode.CURLED, message));
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
