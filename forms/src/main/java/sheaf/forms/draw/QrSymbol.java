package sheaf.forms.draw;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.page.MmRect;

/** A QR code (ISO/IEC 18004) as rectangles on a page. */
public final class QrSymbol {

  /** White modules that the standard asks for around the symbol. */
  private static final int QUIET = 4;

  /** Smallest module, in millimetres, that a whole page's photograph still shows. */
  private static final double LEAST_ON_SHEET = 0.6;

  /** Smallest module, in millimetres, for a phone held close to a card. */
  private static final double LEAST_ON_CARD = 0.45;

  private static final List<ErrorCorrectionLevel> ON_CARD =
      List.of(
          ErrorCorrectionLevel.H,
          ErrorCorrectionLevel.Q,
          ErrorCorrectionLevel.M,
          ErrorCorrectionLevel.L);

  /** Trying all masks for the best takes most of the time, and the size does not depend on it. */
  private static final Map<EncodeHintType, Object> ANY_MASK =
      Map.of(EncodeHintType.QR_MASK_PATTERN, 0);

  private QrSymbol() {}

  /**
   * The dark modules of a sheet's code that fills a square, its quiet zone included: with the
   * strongest error correction (H, else Q) whose modules stay large enough.
   *
   * @throws IllegalArgumentException when the text is too long for the square
   */
  public static List<MmRect> onSheet(MmRect square, String text) {
    return fill(
        square, text, List.of(ErrorCorrectionLevel.H, ErrorCorrectionLevel.Q), LEAST_ON_SHEET);
  }

  /**
   * The same for a card, which holds longer texts but no holes: with any error correction, and with
   * smaller modules.
   *
   * @throws IllegalArgumentException when the text is too long for the square
   */
  public static List<MmRect> onCard(MmRect square, String text) {
    return fill(square, text, ON_CARD, LEAST_ON_CARD);
  }

  /** Whether {@link #onCard} has room for a text. */
  public static boolean fitsCard(MmRect square, String text) {
    return fitting(square, text, List.of(ErrorCorrectionLevel.L), LEAST_ON_CARD).isPresent();
  }

  private static List<MmRect> fill(
      MmRect square, String text, List<ErrorCorrectionLevel> levels, double leastModule) {
    return fitting(square, text, levels, leastModule)
        .flatMap(level -> encode(text, level, Map.of()))
        .map(matrix -> modules(matrix, square))
        .orElseThrow(
            () ->
                // Not the text itself: a record's link is a secret.
                new IllegalArgumentException(
                    "%d characters are too many for a code of %.0f mm"
                        .formatted(text.length(), square.width())));
  }

  /** The first level at which the modules are large enough. */
  private static Optional<ErrorCorrectionLevel> fitting(
      MmRect square, String text, List<ErrorCorrectionLevel> levels, double leastModule) {
    return levels.stream()
        .filter(
            level ->
                encode(text, level, ANY_MASK)
                    .filter(
                        matrix -> square.width() / (matrix.getWidth() + 2 * QUIET) >= leastModule)
                    .isPresent())
        .findFirst();
  }

  /** Empty when no code holds so much. */
  private static Optional<ByteMatrix> encode(
      String text, ErrorCorrectionLevel level, Map<EncodeHintType, Object> hints) {
    try {
      return Optional.of(Encoder.encode(text, level, hints).getMatrix());
    } catch (WriterException e) {
      return Optional.empty();
    }
  }

  /** Neighbours in a row are joined into one rectangle. */
  private static List<MmRect> modules(ByteMatrix matrix, MmRect square) {
    double module = square.width() / (matrix.getWidth() + 2 * QUIET);
    List<MmRect> dark = new ArrayList<>();
    for (int row = 0; row < matrix.getHeight(); row++) {
      int start = -1;
      for (int column = 0; column <= matrix.getWidth(); column++) {
        boolean on = column < matrix.getWidth() && matrix.get(column, row) == 1;
        if (on && start < 0) {
          start = column;
        } else if (!on && start >= 0) {
          dark.add(
              new MmRect(
                  square.x() + (QUIET + start) * module,
                  square.y() + (QUIET + row) * module,
                  (column - start) * module,
                  module));
          start = -1;
        }
      }
    }
    return dark;
  }
}
