package sheaf.scanner.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Field;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.TearReading;
import sheaf.scanner.hole.SlitLine;
import sheaf.scanner.proof.ProofMark.Style;

/** What is drawn on a page's proof: everything that was read, then everything that is doubted. */
final class ProofMarks {

  /** Room left around a printed box, in millimetres. */
  private static final double AROUND_BOX = 0.5;

  /** Diameters of the rings at a tear's ends: a usual shaft's and half of it, in millimetres. */
  private static final double POINT_RING = 6.4;

  private static final double TAIL_RING = 3.2;

  private final Layout layout;
  private final List<ProofMark> marks = new ArrayList<>();

  private ProofMarks(Layout layout) {
    this.layout = layout;
  }

  static List<ProofMark> of(
      Layout layout, PageReading reading, List<SlitLine> slits, ProofLegend legend) {
    ProofMarks proof = new ProofMarks(layout);
    layout.fields().forEach(field -> proof.field(field, reading));
    reading.holes().forEach(proof::aim);
    slits.forEach(slit -> proof.add(new ProofMark.Line(slit.rim(), slit.tip(), Style.SOLID)));
    reading.holes().forEach(proof::hole);
    reading.tears().forEach(tear -> proof.tear(tear, reading.printScale()));
    legend.doubts().forEach(proof::add);
    return proof.marks;
  }

  /** Where words are printed. */
  static List<MmRect> labels(Layout layout) {
    return layout.ink().stream()
        .filter(Ink.Label.class::isInstance)
        .map(ink -> ((Ink.Label) ink).rect())
        .toList();
  }

  private void add(ProofMark mark) {
    marks.add(mark);
  }

  private void field(Field field, PageReading reading) {
    if (field instanceof Field.Choice choice) {
      String answer =
          reading
              .field(field.key())
              .filter(said -> said.state() == FieldReading.State.READ)
              .map(FieldReading::text)
              .orElse("");
      choice.options().stream()
          .filter(option -> option.value().equals(answer))
          .forEach(option -> add(new ProofMark.Frame(option.box().grow(AROUND_BOX))));
    }
  }

  private void aim(Hole hole) {
    dot(hole).ifPresent(dot -> add(new ProofMark.Line(hole.axis(), dot.centre(), Style.DOTTED)));
  }

  /** The dot that a hole was shot at: the nearest of those of its aim. */
  private Optional<AimDot> dot(Hole hole) {
    return layout.dots().stream()
        .filter(dot -> dot.aim() == hole.aim())
        .min(Comparator.comparingDouble(dot -> dot.centre().distanceTo(hole.axis())));
  }

  private void hole(Hole hole) {
    add(new ProofMark.Shaft(hole.axis(), hole.diameter()));
    add(new ProofMark.Word(hole.axis(), hole.diameter() / 2, word(hole.head())));
  }

  /** A ring at the point, a smaller one at the tail, and how far apart they are. */
  private void tear(TearReading tear, Optional<PrintScale> scale) {
    add(new ProofMark.Line(tear.point(), tear.tail(), Style.SOLID));
    add(new ProofMark.Shaft(tear.point(), POINT_RING));
    add(new ProofMark.Shaft(tear.tail(), TAIL_RING));
    String length =
        tear.isBulletHole()
            ? "bullet hole"
            : String.format(Locale.ROOT, "%.1f mm", tear.pointToTail(scale).length());
    add(new ProofMark.Word(tear.tail(), POINT_RING, length));
  }

  private static String word(Head head) {
    return switch (head) {
      case FIELD -> "field";
      case BROADHEAD -> "broadhead";
      case UNKNOWN -> "which head?";
    };
  }
}
