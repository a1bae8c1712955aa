package sheaf.samples.damage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.Truth;

/**
 * A sheet that lay squarely on the glass in front of its backing, so that every place of it is
 * known in the picture: something to be damaged.
 */
final class CleanScan {

  private static final int DPI = 150;

  private static final double PIXELS_PER_MM = DPI / 25.4;
  private static final PaperLook PAPER = new PaperLook(new Color(250, 249, 246), 0.6, 0, 22);

  private final BufferedImage picture;
  private final Layout layout;
  private final Truth truth;

  private CleanScan(BufferedImage picture, Layout layout, Truth truth) {
    this.picture = picture;
    this.layout = layout;
    this.truth = truth;
  }

  /** A pair sheet of the job that a seed stands for, with six arrows through it. */
  static CleanScan shot(Variant variant, long seed) {
    Layout layout = Layouts.current(variant, Paper.LETTER, UnitSystem.INCHES);
    Map<String, String> ticks =
        Map.of("distance", "20", "arrows_field", "3", "arrows_broadhead", "3");
    return of(layout, arrows(layout), ticks, seed);
  }

  /** A bench card of the job that a seed stands for, ticked. */
  static CleanScan ticked(long seed) {
    Layout layout = Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);
    Map<String, String> ticks =
        Map.of("hand", "right", "inspect_limbs", "sound", "inspect_arrows", "not sound");
    return of(layout, List.of(), ticks, seed);
  }

  private static CleanScan of(
      Layout layout, List<Arrow> arrows, Map<String, String> ticks, long seed) {
    SheetCode code = new SheetCode(JobId.random(new SplittableRandom(seed)), 3, layout.id());
    Scene scene =
        new Scene(
            code,
            Behind.BACKING,
            0.98,
            PAPER,
            6.2,
            arrows,
            ticks,
            Decoys.NONE,
            PrintScale.TRUE_SIZE,
            seed);
    Scene.Ready ready = scene.make(300 / 25.4);
    BufferedImage picture =
        new FlatbedScan(DPI, true, 0, 0, scene.scale(), 0.5, 1, 1, 0, 0, seed)
            .scan(ready.page(), ready.backdrop());
    return new CleanScan(picture, layout, scene.truth(ready.shots(), DPI, true, true, "read"));
  }

  private static List<Arrow> arrows(Layout layout) {
    MmPoint field = layout.dots().get(0).centre();
    MmPoint broadhead = layout.dots().get(layout.dots().size() - 1).centre();
    return List.of(
        fieldPoint(layout, field.plus(new MmVector(-9, -12))),
        fieldPoint(layout, field.plus(new MmVector(8, -7))),
        fieldPoint(layout, field.plus(new MmVector(-2, 12))),
        broadhead(layout, broadhead.plus(new MmVector(-31, 14))),
        broadhead(layout, broadhead.plus(new MmVector(25, 21))),
        broadhead(layout, broadhead.plus(new MmVector(27, -24))));
  }

  private static Arrow fieldPoint(Layout layout, MmPoint axis) {
    return new Arrow(axis, Head.FIELD, 0, 0, layout.dots().get(0).aim());
  }

  private static Arrow broadhead(Layout layout, MmPoint axis) {
    Aim aim = layout.dots().get(layout.dots().size() - 1).aim();
    return new Arrow(axis, Head.BROADHEAD, 3, 30, aim);
  }

  Layout layout() {
    return layout;
  }

  Truth truth() {
    return truth;
  }

  /** A fresh copy of the picture. */
  BufferedImage picture() {
    BufferedImage copy =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = copy.createGraphics();
    g.drawImage(picture, 0, 0, null);
    g.dispose();
    return copy;
  }

  /** Draws on a copy in millimetres of the page. */
  Graphics2D brush(BufferedImage copy) {
    Graphics2D g = copy.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.translate(
        (copy.getWidth() - layout.page().width() * PIXELS_PER_MM) / 2,
        (copy.getHeight() - layout.page().height() * PIXELS_PER_MM) / 2);
    g.scale(PIXELS_PER_MM, PIXELS_PER_MM);
    return g;
  }
}
