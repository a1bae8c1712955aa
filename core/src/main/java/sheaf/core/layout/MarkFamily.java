package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

/**
 * Eight tag numbers that no other variant or paper uses, so that the register marks alone tell what
 * a sheet is, where its marks stand and where its codes are to be found.
 *
 * <p>The table is fixed for good: paper printed from it lies in drawers. New papers take new lines.
 */
public enum MarkFamily {
  /** Tags 0 to 7. */
  PAIR_TWO_DOTS_LETTER(0, Variant.TWO_DOTS, Paper.LETTER),
  /** Tags 8 to 15. */
  PAIR_TWO_DOTS_A4(1, Variant.TWO_DOTS, Paper.A4),
  /** Tags 16 to 23. */
  PAIR_SHARED_DOT_LETTER(2, Variant.SHARED_DOT, Paper.LETTER),
  /** Tags 24 to 31. */
  PAIR_SHARED_DOT_A4(3, Variant.SHARED_DOT, Paper.A4),
  /** Tags 32 to 39. */
  BENCH_CARD_FRONT_LETTER(4, Variant.FRONT, Paper.LETTER),
  /** Tags 40 to 47. */
  BENCH_CARD_FRONT_A4(5, Variant.FRONT, Paper.A4);

  /** Marks on a sheet: four corners and four edge middles. */
  public static final int MARKS = 8;

  /**
   * From the paper's edge to a mark, in millimetres: no printer leaves more than 6 mm blank, and
   * the mark's white border comes on top.
   */
  private static final double MARGIN = 9;

  /** Side of a mark in millimetres; a cell is 1.75 mm, ten pixels in a 150 dpi scan. */
  private static final double MARK = 14;

  /** Side of a code with its quiet zone: 41 modules (QR version 4) of more than 0.6 mm. */
  private static final double CODE = 26;

  /** White between a mark and a code, more than the mark's own border of one cell. */
  private static final double APART = 3;

  private final int index;
  private final Variant variant;
  private final Paper paper;

  MarkFamily(int index, Variant variant, Paper paper) {
    this.index = index;
    this.variant = variant;
    this.paper = paper;
  }

  /** The form of sheet that bears these marks. */
  public Variant variant() {
    return variant;
  }

  /** The paper that bears these marks. */
  public Paper paper() {
    return paper;
  }

  /** The family of a sheet; throws when none was ever set aside for it. */
  public static MarkFamily of(Variant variant, Paper paper) {
    for (MarkFamily family : values()) {
      if (family.variant == variant && family.paper == paper) {
        return family;
      }
    }
    throw new IllegalArgumentException("no marks for " + variant + " on " + paper);
  }

  /** The family that a tag belongs to; empty for a tag that no sheet bears. */
  public static Optional<MarkFamily> ofTag(int tag) {
    for (MarkFamily family : values()) {
      if (tag / MARKS == family.index) {
        return Optional.of(family);
      }
    }
    return Optional.empty();
  }

  /** The eight marks, clockwise from the top left. */
  public List<RegisterMark> marks() {
    double half = MARK / 2;
    double left = MARGIN + half;
    double right = paper.width() - MARGIN - half;
    double top = MARGIN + half;
    double bottom = paper.height() - MARGIN - half;
    double centre = paper.width() / 2;
    double middle = paper.height() / 2;
    List<MmPoint> places =
        List.of(
            new MmPoint(left, top),
            new MmPoint(centre, top),
            new MmPoint(right, top),
            new MmPoint(right, middle),
            new MmPoint(right, bottom),
            new MmPoint(centre, bottom),
            new MmPoint(left, bottom),
            new MmPoint(left, middle));
    List<RegisterMark> marks = new ArrayList<>();
    for (MmPoint place : places) {
      marks.add(new RegisterMark(index * MARKS + marks.size(), MmRect.square(place, MARK)));
    }
    return marks;
  }

  /** Where the two codes stand: beside the top right mark and beside the bottom left one. */
  public List<MmRect> codes() {
    double inset = MARGIN + MARK + APART;
    return List.of(
        new MmRect(paper.width() - inset - CODE, MARGIN, CODE, CODE),
        new MmRect(inset, paper.height() - MARGIN - CODE, CODE, CODE));
  }
}
