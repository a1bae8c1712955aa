package sheaf.core.layout;

import java.util.ArrayList;
import java.util.Arrays;
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
  BENCH_CARD_FRONT_A4(5, Variant.FRONT, Paper.A4),
  /** Tags 48 to 55. */
  BENCH_CARD_BACK_LETTER(6, Variant.BACK, Paper.LETTER),
  /** Tags 56 to 63. */
  BENCH_CARD_BACK_A4(7, Variant.BACK, Paper.A4),
  /** Tags 64 to 71. */
  BENCH_CARD_RECURVE_FRONT_LETTER(8, Variant.RECURVE_FRONT, Paper.LETTER),
  /** Tags 72 to 79. */
  BENCH_CARD_RECURVE_FRONT_A4(9, Variant.RECURVE_FRONT, Paper.A4),
  /** Tags 80 to 87. */
  BENCH_CARD_RECURVE_BACK_LETTER(10, Variant.RECURVE_BACK, Paper.LETTER),
  /** Tags 88 to 95. */
  BENCH_CARD_RECURVE_BACK_A4(11, Variant.RECURVE_BACK, Paper.A4),
  /** Tags 96 to 103. */
  BENCH_CARD_CROSSBOW_FRONT_LETTER(12, Variant.CROSSBOW_FRONT, Paper.LETTER),
  /** Tags 104 to 111. */
  BENCH_CARD_CROSSBOW_FRONT_A4(13, Variant.CROSSBOW_FRONT, Paper.A4),
  /** Tags 112 to 119. */
  BENCH_CARD_CROSSBOW_BACK_LETTER(14, Variant.CROSSBOW_BACK, Paper.LETTER),
  /** Tags 120 to 127. */
  BENCH_CARD_CROSSBOW_BACK_A4(15, Variant.CROSSBOW_BACK, Paper.A4),
  /** Tags 128 to 135. */
  RETURN_CARD_FRONT_LETTER(16, Variant.RETURN_FRONT, Paper.LETTER),
  /** Tags 136 to 143. */
  RETURN_CARD_FRONT_A4(17, Variant.RETURN_FRONT, Paper.A4),
  /** Tags 144 to 151. */
  RETURN_CARD_BACK_LETTER(18, Variant.RETURN_BACK, Paper.LETTER),
  /** Tags 152 to 159. */
  RETURN_CARD_BACK_A4(19, Variant.RETURN_BACK, Paper.A4),
  /** Tags 160 to 167. */
  RETURN_CARD_RECURVE_FRONT_LETTER(20, Variant.RETURN_RECURVE_FRONT, Paper.LETTER),
  /** Tags 168 to 175. */
  RETURN_CARD_RECURVE_FRONT_A4(21, Variant.RETURN_RECURVE_FRONT, Paper.A4),
  /** Tags 176 to 183. */
  RETURN_CARD_RECURVE_BACK_LETTER(22, Variant.RETURN_RECURVE_BACK, Paper.LETTER),
  /** Tags 184 to 191. */
  RETURN_CARD_RECURVE_BACK_A4(23, Variant.RETURN_RECURVE_BACK, Paper.A4),
  /** Tags 192 to 199. */
  RETURN_CARD_CROSSBOW_FRONT_LETTER(24, Variant.RETURN_CROSSBOW_FRONT, Paper.LETTER),
  /** Tags 200 to 207. */
  RETURN_CARD_CROSSBOW_FRONT_A4(25, Variant.RETURN_CROSSBOW_FRONT, Paper.A4),
  /** Tags 208 to 215. */
  RETURN_CARD_CROSSBOW_BACK_LETTER(26, Variant.RETURN_CROSSBOW_BACK, Paper.LETTER),
  /** Tags 216 to 223. */
  RETURN_CARD_CROSSBOW_BACK_A4(27, Variant.RETURN_CROSSBOW_BACK, Paper.A4),
  /** Tags 224 to 231. */
  TEAR_LETTER(28, Variant.FOUR_ZONES, Paper.LETTER),
  /** Tags 232 to 239. */
  TEAR_A4(29, Variant.FOUR_ZONES, Paper.A4),
  /** Tags 240 to 247. */
  TEAR_TABLOID(30, Variant.FOUR_ZONES, Paper.TABLOID),
  /** Tags 248 to 255. */
  TEAR_A3(31, Variant.FOUR_ZONES, Paper.A3),
  /** Tags 256 to 263. */
  LINE_OPEN_LETTER(32, Variant.OPEN_DISTANCES, Paper.LETTER),
  /** Tags 264 to 271. */
  LINE_OPEN_A4(33, Variant.OPEN_DISTANCES, Paper.A4),
  /** Tags 272 to 279. */
  LINE_OPEN_TABLOID(34, Variant.OPEN_DISTANCES, Paper.TABLOID),
  /** Tags 280 to 287. */
  LINE_OPEN_A3(35, Variant.OPEN_DISTANCES, Paper.A3),
  /** Tags 288 to 295. */
  LINE_SET_LETTER(36, Variant.SET_DISTANCES, Paper.LETTER),
  /** Tags 296 to 303. */
  LINE_SET_A4(37, Variant.SET_DISTANCES, Paper.A4),
  /** Tags 304 to 311. */
  LINE_SET_TABLOID(38, Variant.SET_DISTANCES, Paper.TABLOID),
  /** Tags 312 to 319. */
  LINE_SET_A3(39, Variant.SET_DISTANCES, Paper.A3),
  /** Tags 320 to 327. */
  GROUP_LETTER(40, Variant.GROUP_GRID, Paper.LETTER),
  /** Tags 328 to 335. */
  GROUP_A4(41, Variant.GROUP_GRID, Paper.A4),
  /** Tags 336 to 343. */
  GROUP_TABLOID(42, Variant.GROUP_GRID, Paper.TABLOID),
  /** Tags 344 to 351. */
  GROUP_A3(43, Variant.GROUP_GRID, Paper.A3),
  /** Tags 352 to 359. */
  SIGHT_IN_LETTER(44, Variant.SIGHT_GRID, Paper.LETTER),
  /** Tags 360 to 367. */
  SIGHT_IN_A4(45, Variant.SIGHT_GRID, Paper.A4),
  /** Tags 368 to 375. */
  SIGHT_IN_TABLOID(46, Variant.SIGHT_GRID, Paper.TABLOID),
  /** Tags 376 to 383. */
  SIGHT_IN_A3(47, Variant.SIGHT_GRID, Paper.A3),
  /** Tags 384 to 391. */
  SCALE_LETTER(48, Variant.CROSS, Paper.LETTER),
  /** Tags 392 to 399. */
  SCALE_A4(49, Variant.CROSS, Paper.A4),
  /** Tags 400 to 407. */
  SCALE_TABLOID(50, Variant.CROSS, Paper.TABLOID),
  /** Tags 408 to 415. */
  SCALE_A3(51, Variant.CROSS, Paper.A3),
  /** Tags 416 to 423. */
  PAIR_TWO_DOTS_TABLOID(52, Variant.TWO_DOTS, Paper.TABLOID),
  /** Tags 424 to 431. */
  PAIR_TWO_DOTS_A3(53, Variant.TWO_DOTS, Paper.A3),
  /** Tags 432 to 439. */
  PAIR_SHARED_DOT_TABLOID(54, Variant.SHARED_DOT, Paper.TABLOID),
  /** Tags 440 to 447. */
  PAIR_SHARED_DOT_A3(55, Variant.SHARED_DOT, Paper.A3),
  /** Tags 448 to 455. */
  FORCE_DRAW_LETTER(56, Variant.PULLS, Paper.LETTER),
  /** Tags 456 to 463. */
  FORCE_DRAW_A4(57, Variant.PULLS, Paper.A4);

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

  /** Whether marks were ever set aside for a variant on a paper. */
  static boolean has(Variant variant, Paper paper) {
    return Arrays.stream(values()).anyMatch(f -> f.variant == variant && f.paper == paper);
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
