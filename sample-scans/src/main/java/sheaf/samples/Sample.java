package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.reading.PageReading;
import sheaf.samples.scene.Truth;
import sheaf.scanner.SheetReader;

/**
 * A made scan.
 *
 * @param file its content
 * @param truth what is known of it
 */
public record Sample(byte[] file, Truth truth) {

  /** What is read of it. */
  PageReading read(String name, SheetReader reader) {
    List<PageReading> readings = new ArrayList<>();
    reader.read(name, file, SheetReader.Proof.SKIP, page -> readings.add(page.reading()));
    return readings.get(0);
  }
}
