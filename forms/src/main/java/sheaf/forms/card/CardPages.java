package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPage;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.forms.draw.ArchivalDocument;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** A finished card or a shop copy: its sections in order, on as many pages as they need. */
public final class CardPages {

  private static final double MARGIN = 9;
  private static final double SMALL = 7;
  private static final double NORMAL = 8;
  private static final double VERDICT = 12;

  /** Heights of the pair picture as shares of the page, the best-looking first. */
  private static final double[] PICTURE_SHARES = {0.24, 0.2, 0.16};

  /** Worse than any number of pages. */
  private static final int OVERFLOW = 10_000;

  /** Two tears beside a line sheet need more room than it. */
  private static final double TEARS_SHARE = 0.58;

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

  /** With the largest picture that needs the fewest pages and, of those, keeps the table whole. */
  private List<List<Flow.Placed>> placed(
      BowRecord record, CardHead head, MmRect first, MmRect others) {
    List<List<Flow.Placed>> best = List.of();
    for (boolean whole : new boolean[] {false, true}) {
      for (double share : PICTURE_SHARES) {
        List<List<Flow.Placed>> pages =
            new Flow(document.typeface(), first, others)
                .place(blocks(record, head, share * pageHeight, whole));
        if (best.isEmpty() || cost(pages, others) < cost(best, others)) {
          best = pages;
        }
        if (best.size() == 1) {
          return best;
        }
      }
    }
    return best;
  }

  private static int cost(List<List<Flow.Placed>> pages, MmRect room) {
    boolean tableIsCut =
        pages.stream().skip(1).anyMatch(page -> page.get(0).block() instanceof MeasureRow);
    boolean fits =
        pages.stream()
            .flatMap(List::stream)
            .allMatch(placed -> placed.room().bottom() <= room.bottom() + 0.01);
    return 2 * pages.size() + (tableIsCut ? 1 : 0) + (fits ? 0 : OVERFLOW);
  }

  private void foot(TaggedPen pen, String text) throws IOException {
    MmRect room = new MmRect(MARGIN, pageHeight - MARGIN - 0.4, pageWidth - 2 * MARGIN, 4);
    pen.decoration(p -> p.block(text, room, Weight.REGULAR, SMALL, Align.RIGHT));
  }

  /**
   * Everything that the card tells.
   *
   * @param whole whether the set-up is kept on one page
   */
  private List<Block> blocks(BowRecord record, CardHead head, double pictureHeight, boolean whole) {
    Visit visit = record.last();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new HeadBlock(record, head));
    if (!visit.notSound().isEmpty()) {
      blocks.add(Frame.doNotShoot(CardWords.notSound(visit)));
    }
    CardWords.doubts(visit).map(Frame::doubts).ifPresent(blocks::add);
    blocks.addAll(verdict(visit.pairAsLeft(), pictureHeight));
    blocks.addAll(whole ? List.of(new Stack(setUp(record))) : setUp(record));
    blocks.addAll(story(visit));
    blocks.addAll(EarlierVisits.of(record));
    CardWords.blank(visit)
        .ifPresent(
            words -> {
              blocks.add(Block.gap(1.6));
              blocks.add(TextBlock.text(words, NORMAL));
            });
    if (CardWords.lacksLetters(record, head, document.typeface())) {
      blocks.add(Block.gap(1.6));
      blocks.add(TextBlock.text(CardWords.LACKING, SMALL));
    }
    return blocks;
  }

  private List<Block> setUp(BowRecord record) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(TextBlock.heading("Set-up as left"));
    blocks.add(TextBlock.text(CardWords.setUp(record), NORMAL));
    blocks.add(TextBlock.text(CardWords.LEGEND, SMALL));
    blocks.add(Block.gap(1));
    blocks.addAll(MeasureRow.table(record.last().measures(), asFound));
    return blocks;
  }

  private static List<Block> verdict(Optional<PairResult> pair, double pictureHeight) {
    if (pair.isEmpty()) {
      return List.of(
          TextBlock.bold("Where broadheads hit is not known yet.", VERDICT),
          TextBlock.text(
              "No pair sheet of this job has been read in. Shoot field points and broadheads at "
                  + "one, read it in, and print this card again.",
              9));
    }
    return List.of(
        TextBlock.bold(CardWords.bound(Verdict.of(pair.get())), VERDICT),
        TextBlock.text(CardWords.about(pair.get()), NORMAL),
        Block.gap(1.5),
        new PairBlock(pair.get(), pictureHeight));
  }

  private List<Block> story(Visit visit) {
    List<Block> tears = new ArrayList<>();
    if (!visit.tears().isEmpty()) {
      tears.add(TextBlock.heading("Tears through paper"));
      tears.add(new TearBlock(visit.tears()));
    }
    List<Block> line = new ArrayList<>();
    if (!visit.line().isEmpty()) {
      line.add(TextBlock.heading("Line sheet"));
      line.add(new LineBlock(visit.line()));
    }
    List<Block> blocks = new ArrayList<>();
    if (asFound && !tears.isEmpty() && !line.isEmpty()) {
      blocks.add(new Beside(new Stack(tears), TEARS_SHARE, new Stack(line)));
    } else {
      blocks.addAll(tears);
      blocks.addAll(line);
    }
    blocks.addAll(lists(visit));
    return blocks;
  }

  private static List<Block> lists(Visit visit) {
    List<Block> blocks = new ArrayList<>();
    if (!visit.changes().isEmpty()) {
      blocks.add(TextBlock.heading("What was changed"));
      blocks.addAll(ListItem.numbered(visit.changes().stream().map(CardWords::change).toList()));
    }
    if (!visit.notes().isEmpty()) {
      blocks.add(TextBlock.heading("Notes"));
      blocks.addAll(ListItem.numbered(visit.notes()));
    }
    return blocks;
  }
}
