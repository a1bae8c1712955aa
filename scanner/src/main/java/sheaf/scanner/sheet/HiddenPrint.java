package sheaf.scanner.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfDouble;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;

/**
 * Printed words and rings that should be seen and are not. Where a sheet is folded over, covered or
 * torn off, its boxes and holes are not seen either, and must not be taken for blank.
 */
public final class HiddenPrint {

  /**
   * Grey levels under words and rings spread by 6 % and more of the print's contrast, even at 100
   * dpi; on bare paper, a lid or a sheet of one colour by under 3 %.
   */
  private static final double BARE = 0.035;

  /** One hidden word may be a stain or a sticker; this many are a part of the sheet. */
  private static final int PART = 2;

  /** A label of fewer letters, such as a decimal point, has too little ink to be missed. */
  private static final int WORD = 3;

  private HiddenPrint() {}

  /** The doubt, at the first place where print is hidden; empty when all is seen. */
  public static Optional<Reason> doubt(FlatSheet sheet, Layout layout) {
    double bare = BARE * contrast(sheet, layout);
    List<MmRect> hidden =
        layout.ink().stream()
            .flatMap(HiddenPrint::place)
            .filter(place -> spread(sheet, place) < bare)
            .toList();
    return hidden.size() < PART
        ? Optional.empty()
        : Optional.of(
            Reason.at(
                ReasonCode.PRINT_HIDDEN,
                "The sheet's print cannot be seen here: is it folded over, covered or torn off? What is missing was not read.",
                hidden.get(0).centre()));
  }

  /** Where there is always ink; a label that stands for something else may be empty. */
  private static Stream<MmRect> place(Ink ink) {
    if (ink instanceof Ink.Ring ring) {
      return Stream.of(MmRect.square(ring.centre(), 2 * ring.radius()));
    }
    return ink instanceof Ink.Label label
            && !label.text().contains("{")
            && label.text().length() >= WORD
        ? Stream.of(label.rect())
        : Stream.empty();
  }

  /** From black to white of the register mark that shows most of it: some may be torn off. */
  private static double contrast(FlatSheet sheet, Layout layout) {
    return layout.marks().stream().mapToDouble(mark -> contrast(sheet, mark)).max().orElseThrow();
  }

  private static double contrast(FlatSheet sheet, RegisterMark mark) {
    double white = 0;
    double black = 0;
    int whites = 0;
    for (int row = 0; row < RegisterMark.CELLS; row++) {
      for (int column = 0; column < RegisterMark.CELLS; column++) {
        double tone = tone(sheet, cell(mark, row, column));
        boolean isWhite = mark.white(row, column);
        white += isWhite ? tone : 0;
        black += isWhite ? 0 : tone;
        whites += isWhite ? 1 : 0;
      }
    }
    return white / whites - black / (RegisterMark.CELLS * RegisterMark.CELLS - whites);
  }

  private static double tone(FlatSheet sheet, MmRect rect) {
    try (Mats mats = new Mats()) {
      return Core.mean(mats.own(sheet.grey().submat(sheet.pixels(rect)))).val[0];
    }
  }

  /** The middle half of a cell. */
  private static MmRect cell(RegisterMark mark, int row, int column) {
    double side = mark.cell();
    MmPoint middle =
        new MmPoint(
            mark.square().x() + (column + 0.5) * side, mark.square().y() + (row + 0.5) * side);
    return MmRect.square(middle, side / 2);
  }

  /** Standard deviation of the grey levels within a rectangle. */
  private static double spread(FlatSheet sheet, MmRect rect) {
    try (Mats mats = new Mats()) {
      Mat crop = mats.own(sheet.grey().submat(sheet.pixels(rect)));
      MatOfDouble mean = mats.own(new MatOfDouble());
      MatOfDouble deviation = mats.own(new MatOfDouble());
      Core.meanStdDev(crop, mean, deviation);
      return deviation.get(0, 0)[0];
    }
  }
}
