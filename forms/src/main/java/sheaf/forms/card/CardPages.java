package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.forms.draw.ArchivalDocument;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** A finished card or a shop copy: its sections in order, on as many pages as they need. */
public final class CardPages {

  private static final double MARGIN = 9;
  private static final double SMALL = 7;

  /** What a page costs, more than all sections cut and all holes left for its sake. */
  private static final int PAGE = 1000;

  private static final int CUT = 20;

  /** Worse than any number of pages. */
  private static final int OVERFLOW = 1_000_000;

  /** A page that ends with this share of it empty has a hole, unless it is the last. */
  private static final double HOLE = 0.15;

  private final ArchivalDocument document;
  private final double pageWidth;
  private final double pageHeight;
  private final boolean asFound;

  /**
   * Cards on pages of a size in millimetres.
   *
   * @param asFound whether the measures are told as found too, which needs a full page
   */
  public CardPages(
      ArchivalDocument document, double pageWidth, double pageHeight, boolean asFound) {
    this.document = document;
    this.pageWidth = pageWidth;
    this.pageHeight = pageHeight;
    this.asFound = asFound;
  }

  /** Draws the card of a record. */
  public void draw(BowRecord record, CardHead head) throws IOException {
    Typeface typeface = document.typeface();
    double width = pageWidth - 2 * MARGIN;
    Cautions cautions = new Cautions(CardWords.sheets(record.last()));
    double inside = pageHeight - 2 * MARGIN;
    MmRect first = new MmRect(MARGIN, MARGIN, width, inside - cautions.height(typeface, width));
    MmRect others = new MmRect(MARGIN, MARGIN, width, inside);
    List<List<Flow.Placed>> pages = placed(record, head, first, others);
    for (int i = 0; i < pages.size(); i++) {
      List<Flow.Placed> placed = pages.get(i);
      PDPage page = document.page(pageWidth, pageHeight);
      String foot =
          "Job %s, page %d of %d".formatted(record.last().job().spoken(), i + 1, pages.size());
      boolean isFirst = i == 0;
      document.draw(
          page,
          pen -> {
            pen.colour(Color.BLACK);
            for (Flow.Placed block : placed) {
              block.block().draw(pen, document.root(), block.room());
            }
            if (isFirst) {
              double height = cautions.height(typeface, width);
              cautions.draw(
                  pen, document.root(), new MmRect(MARGIN, first.bottom(), width, height));
            }
            foot(pen, foot);
          });
    }
  }

  /** With the loosest spacing of those that come to the best pages. */
  private List<List<Flow.Placed>> placed(
      BowRecord record, CardHead head, MmRect first, MmRect others) {
    CardSections sections = new CardSections(record, head, asFound, first.width(), pageHeight);
    List<List<Flow.Placed>> best = List.of();
    for (boolean whole : new boolean[] {false, true}) {
      for (Spacing spacing : Spacing.LOOSEST_FIRST) {
        List<Block> blocks = new ArrayList<>();
        for (List<Block> section : sections.in(spacing, document.typeface())) {
          blocks.addAll(whole ? together(section, others) : section);
        }
        List<List<Flow.Placed>> pages = new Flow(document.typeface(), first, others).place(blocks);
        if (best.isEmpty() || cost(pages, first, others) < cost(best, first, others)) {
          best = pages;
        }
        if (best.size() == 1) {
          return best;
        }
      }
      if (cost(best, first, others) % PAGE == 0) {
        return best;
      }
    }
    return best;
  }

  /** A section that is not cut in two, when a page holds it. */
  private List<Block> together(List<Block> section, MmRect room) {
    Stack stack = new Stack(section);
    boolean fits = stack.height(document.typeface(), room.width()) <= room.height();
    return fits && !section.isEmpty() ? List.of(stack) : section;
  }

  /** Fewer pages first, then no section cut in two, then no page left half empty but the last. */
  private static int cost(List<List<Flow.Placed>> pages, MmRect first, MmRect others) {
    int cost = PAGE * pages.size();
    for (int i = 0; i < pages.size(); i++) {
      MmRect room = i == 0 ? first : others;
      Flow.Placed last = pages.get(i).get(pages.get(i).size() - 1);
      boolean isLast = i == pages.size() - 1;
      cost += last.room().bottom() > room.bottom() + 0.01 ? OVERFLOW : 0;
      cost += i > 0 && pages.get(i).get(0).block().continuesASection() ? CUT : 0;
      cost += !isLast && room.bottom() - last.room().bottom() > HOLE * room.height() ? 1 : 0;
    }
    return cost;
  }

  private void foot(TaggedPen pen, String text) throws IOException {
    MmRect room = new MmRect(MARGIN, pageHeight - MARGIN - 0.4, pageWidth - 2 * MARGIN, 4);
    pen.decoration(p -> p.block(text, room, Weight.REGULAR, SMALL, Align.RIGHT));
  }
}
