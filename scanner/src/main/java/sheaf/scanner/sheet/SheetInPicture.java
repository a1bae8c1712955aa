package sheaf.scanner.sheet;

import java.util.Optional;
import org.opencv.core.Mat;
import org.opencv.imgproc.Imgproc;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.MarkFamily;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.UnreadableException;

/**
 * A sheet recognised in a picture and flattened.
 *
 * @param code what its codes say
 * @param layout where everything is on it
 * @param flat its picture on the page as designed; closed with this
 * @param printScale how large it was printed, where that can be known
 */
public record SheetInPicture(
    SheetCode code, Layout layout, FlatSheet flat, Optional<PrintScale> printScale)
    implements AutoCloseable {

  /** Fewer pixels a millimetre than this (about 100 dpi) do not show slits or ticks. */
  private static final double TOO_COARSE = 3.8;

  /**
   * Finds the sheet in a picture.
   *
   * @throws UnreadableException with the reason when there is none, or not one whole flat one
   */
  public static SheetInPicture find(Picture picture) throws UnreadableException {
    try (Mats mats = new Mats()) {
      Mat grey = picture.pixels();
      if (picture.isColour()) {
        grey = mats.mat();
        Imgproc.cvtColor(picture.pixels(), grey, Imgproc.COLOR_BGR2GRAY);
      }
      Geometry geometry = Registration.of(grey);
      if (geometry.pixelsPerMm() < TOO_COARSE) {
        throw new UnreadableException(
            ReasonCode.TOO_COARSE,
            "The picture shows only %.1f pixels a millimetre, %.1f are needed: scan at 150 dpi or more, or photograph it from nearer."
                .formatted(geometry.pixelsPerMm(), TOO_COARSE));
      }
      Optional<Mat> colour = picture.isColour() ? Optional.of(picture.pixels()) : Optional.empty();
      FlatSheet flat = Flattening.flatten(grey, colour, geometry);
      try {
        SheetCode code = CodeReader.read(flat, geometry.family().codes());
        Layout layout = layout(code, geometry.family());
        WholeSheet.refuseUnlessInside(layout, geometry, grey.size());
        return new SheetInPicture(code, layout, flat, ScaleMeasure.of(geometry, picture.stated()));
      } catch (UnreadableException e) {
        flat.close();
        throw e;
      }
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

  @Override
  public void close() {
    flat.close();
  }
}
