package sheaf.scanner.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.MarkFamily;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.UnreadableException;

/**
 * A sheet recognised in a picture and flattened.
 *
 * @param code what its codes say
 * @param layout where everything is on it
 * @param flat its picture on the page as designed; closed with this
 * @param printScale how large it was printed, where that can be known
 * @param offLines within how many millimetres of where they should be nine in ten places of printed
 *     lines are that were not used for flattening; empty where too little is seen to tell
 * @param map where its places were in the picture
 */
public record SheetInPicture(
    SheetCode code,
    Layout layout,
    FlatSheet flat,
    Optional<PrintScale> printScale,
    OptionalDouble offLines,
    PageMap map)
    implements AutoCloseable {

  /** Fewer pixels a millimetre than this (about 100 dpi) do not show slits or ticks. */
  private static final double TOO_COARSE = 3.8;

  /** A flatbed shows no foreshortening; measured on clean scans it stays below half of this. */
  private static final double FLATBED = 0.006;

  /** Print farther off than this on the average, in millimetres: holes cannot be placed at all. */
  private static final double NOT_FLAT = 1.5;

  /**
   * Flattening a photo moves 19 places in 20 by less than this, in millimetres: on made photos the
   * root mean square is 0.095 mm, which is a bell's 0.067 mm each way.
   */
  private static final double MOVED = 0.165;

  /** How far the flattening may have moved a place, in millimetres, 19 times in 20. */
  public double movedWithin() {
    return map instanceof FlatPage ? 0 : MOVED;
  }

  /**
   * Finds the sheet in a picture.
   *
   * @throws UnreadableException with the reason when there is none, or not one whole flat one
   */
  public static SheetInPicture find(Picture picture) throws UnreadableException {
    Mat pixels = picture.pixels();
    Registration.Marks marks = Registration.of(pixels);
    MarkFamily family = marks.family();
    if (picture.stated().isPresent()) {
      FlatPage flat = Registration.flat(marks);
      if (flat.foreshortening(family.paper()) <= FLATBED && Registration.fits(marks, flat)) {
        return onGlass(picture, new Geometry(family, flat, marks.marks().size()));
      }
    }
    CurledPage rough = Smoothing.byMarks(marks, pixels.size());
    Geometry geometry = new Geometry(family, rough, marks.marks().size());
    refuseIfCoarse(geometry);
    if (!Registration.onOneSheet(marks, rough)) {
      return squeezed(picture, marks);
    }
    SheetCode code = CodeReader.read(pixels, rough, family.codes());
    Layout layout = layout(code, family);
    WholeSheet.refuseUnlessInside(layout, geometry, pixels.size());
    Smoothing.Smooth smooth = Smoothing.byLines(pixels, marks, rough, layout);
    refuseUnlessFlat(smooth.off());
    FlatSheet flat =
        Flattening.flatten(pixels, new Geometry(family, smooth.map(), marks.marks().size()));
    return new SheetInPicture(code, layout, flat, Optional.empty(), smooth.off(), smooth.map());
  }

  /** No camera takes such a picture: a flat sheet whose picture was made narrower or lower. */
  private static SheetInPicture squeezed(Picture picture, Registration.Marks marks)
      throws UnreadableException {
    FlatPage flat = Registration.flat(marks);
    if (!Registration.fits(marks, flat)) {
      throw Registration.notFlat();
    }
    return onGlass(picture, new Geometry(marks.family(), flat, marks.marks().size()));
  }

  private static SheetInPicture onGlass(Picture picture, Geometry geometry)
      throws UnreadableException {
    Mat pixels = picture.pixels();
    refuseIfCoarse(geometry);
    SheetCode code = CodeReader.read(pixels, geometry.map(), geometry.family().codes());
    Layout layout = layout(code, geometry.family());
    WholeSheet.refuseUnlessInside(layout, geometry, pixels.size());
    OptionalDouble off = Smoothing.offLines(pixels, geometry.map(), layout);
    refuseUnlessFlat(off);
    return new SheetInPicture(
        code,
        layout,
        Flattening.flatten(pixels, geometry),
        picture.stated().flatMap(stated -> ScaleMeasure.of(geometry, stated)),
        off,
        geometry.map());
  }

  private static void refuseIfCoarse(Geometry geometry) throws UnreadableException {
    if (geometry.pixelsPerMm() < TOO_COARSE) {
      throw new UnreadableException(
          ReasonCode.TOO_COARSE,
          "The picture shows only %.1f pixels a millimetre, %.1f are needed: scan at 150 dpi or more, or photograph it from nearer."
              .formatted(geometry.pixelsPerMm(), TOO_COARSE));
    }
  }

  private static void refuseUnlessFlat(OptionalDouble off) throws UnreadableException {
    if (off.isPresent() && off.getAsDouble() > NOT_FLAT) {
      throw new UnreadableException(
          ReasonCode.NOT_FLAT,
          "The sheet does not lie flat (its lines are %.1f mm off): press it flat and take it again."
              .formatted(off.getAsDouble()));
    }
  }

  private static Layout layout(SheetCode code, MarkFamily family) throws UnreadableException {
    if (MarkFamily.of(code.layout().variant(), code.layout().paper()) != family) {
      throw new UnreadableException(
          ReasonCode.CODE_AGAINST_MARKS,
          "The sheet's code says %s on %s, its register marks say %s on %s: if something lies over the sheet, take it away and take the picture again."
              .formatted(
                  code.layout().variant().label(),
                  code.layout().paper().label(),
                  family.variant().label(),
                  family.paper().label()));
    }
    return Layouts.find(code.layout())
        .orElseThrow(
            () ->
                new UnreadableException(
                    ReasonCode.UNKNOWN_LAYOUT,
                    "The sheet was printed by a newer Sheaf (layout %s): update Sheaf, then read it again."
                        .formatted(code.layout().code())));
  }

  /** Where a place on the page lay in the picture. */
  public Pixel inPicture(MmPoint place) {
    Point at = map.toPixel(place);
    return new Pixel(at.x, at.y);
  }

  @Override
  public void close() {
    flat.close();
  }
}
