package sheaf.samples.damage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.reading.PageReading;

/** Parts of a sheet are torn off, folded over or covered with paper of one colour. */
@Tag("slow")
class HiddenPartsTest {

  private static final CleanScan PAIR = CleanScan.shot(Variant.TWO_DOTS, 5);
  private static final CleanScan CARD = CleanScan.ticked(6);
  private static final Color[] COVERS = {
    Color.WHITE, new Color(246, 244, 238), Color.BLACK, Color.GRAY, Harm.BEHIND
  };

  @Property(tries = 16, seed = "7", edgeCases = EdgeCasesMode.NONE)
  void whatIsHiddenIsNeverTakenForBlankOrTicked(
      @ForAll boolean card,
      @ForAll @IntRange(min = 0, max = 4) int cover,
      @ForAll @DoubleRange(min = 0, max = 1) double across,
      @ForAll @DoubleRange(min = 0, max = 1) double down,
      @ForAll @DoubleRange(min = 50, max = 200) double width,
      @ForAll @DoubleRange(min = 50, max = 200) double height) {
    CleanScan scan = card ? CARD : PAIR;
    MmRect page = scan.layout().page();
    BufferedImage picture = scan.picture();
    Graphics2D g = scan.brush(picture);
    g.setColor(COVERS[cover]);
    double x = across * page.width() - width / 2;
    double y = down * page.height() - height / 2;
    g.fill(new Rectangle2D.Double(x, y, width, height));
    g.dispose();

    PageReading reading = Readings.of(picture);

    Readings.assertNotSilentlyWrong(reading, scan.truth());
  }
}
