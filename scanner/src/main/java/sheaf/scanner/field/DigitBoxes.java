package sheaf.scanner.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.page.MmRect;
import sheaf.core.reading.InBox;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.sheet.FlatSheet;

/** What the digit boxes of a sheet show. */
final class DigitBoxes {

  private DigitBoxes() {}

  /** Reads all boxes, those written in at once. */
  static Map<MmRect, InBox> read(FlatSheet sheet, List<MmRect> boxes) {
    Map<MmRect, InBox> shown = new HashMap<>();
    List<MmRect> written = new ArrayList<>();
    List<DigitPicture> pictures = new ArrayList<>();
    for (MmRect box : boxes) {
      Optional<DigitPicture> picture = DigitPicture.of(sheet, box);
      if (picture.isEmpty()) {
        shown.put(box, new InBox.Blank());
      } else {
        written.add(box);
        pictures.add(picture.get());
      }
    }
    if (written.isEmpty()) {
      return shown;
    }
    List<InBox> read = DigitReader.bundled().read(pictures);
    for (int i = 0; i < written.size(); i++) {
      shown.put(written.get(i), read.get(i));
    }
    return shown;
  }
}
