package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.forms.draw.Pen;
import sheaf.forms.draw.QrSymbol;

/** One finished card: its head at the top, its foot at the bottom, the result between them. */
public final class CardPage {

  private static final double MARGIN = 9;
  private static final double CODE = 28;
  private static final double SMALL = 7;
  private static final double NORMAL = 8;
  private static final double LABEL = 7.5;
  private static final double NUMBER = 9;
  private static final double VERDICT = 12;

  /** Width of the picture as a share of the card's inside, and the gap beside it. */
  private static final double PICTURE_SHARE = 0.56;

  private static final double GAP = 5;

  /** The picture is as high as the rest leaves room for, but not higher than this. */
  private static final double HIGHEST_PICTURE = 70;

  /** Usual height of a number with its label, in millimetres. */
  private static final double NUMBER_HEIGHT = 8.6;

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private final Pen pen;
  private final double width;
  private final double pageHeight;

  /** A card to be drawn on a page of a size in millimetres. */
  public CardPage(Pen pen, double pageWidth, double pageHeight) {
    this.pen = pen;
    this.width = pageWidth - 2 * MARGIN;
    this.pageHeight = pageHeight;
  }

  /** Draws the card of a job. */
  public void draw(JobSummary job, CardHead head) throws IOException {
    pen.colour(Color.BLACK);
    SetUp setUp = SetUp.of(job);
    CardFoot foot = new CardFoot(pen, job, setUp, MARGIN, width);
    Column column = head(head);
    banner(setUp.notSound(), column);
    doubts(job, column);
    Optional<PairResult> pair = shown(job);
    verdict(pair, column);
    if (pair.isPresent()) {
      double top = pageHeight - MARGIN - foot.height();
      pair(pair.get(), new MmRect(MARGIN, column.y(), width, top - GAP - column.y()));
      foot.draw(top);
    } else {
      column.skip(GAP);
      foot.fill(column.y(), pageHeight - MARGIN);
    }
  }

  /** The sheet that shows how the bow was left; failing that, the last on which anything hit. */
  private static Optional<PairResult> shown(JobSummary job) {
    return job.asLeft()
        .or(
            () ->
                job.pairs().stream()
                    .filter(pair -> pair.field().isPresent() || pair.broadhead().isPresent())
                    .reduce((earlier, later) -> later));
  }

  private Column head(CardHead head) throws IOException {
    MmRect code = new MmRect(MARGIN + width - CODE, MARGIN - 3, CODE, CODE);
    pen.fill(QrSymbol.onCard(code, head.code()));
    MmRect caption = new MmRect(code.x(), code.bottom() - 0.8, CODE, 4);
    pen.block(head.codeCaption(), caption, Weight.REGULAR, SMALL, Align.CENTRE);
    Column words = new Column(pen, MARGIN, MARGIN - 1, width - CODE - 2);
    words.bold("Finished card", 18);
    if (head.shop().isPresent()) {
      words.name(head.shop().get(), 11, NORMAL);
    }
    words.skip(0.6);
    words.bold("Job " + head.job().spoken(), 10);
    words.text("Printed " + DATE.format(head.printed()), NORMAL);
    Column rest = new Column(pen, MARGIN, MARGIN + CODE + 1, width);
    pen.width(0.4);
    pen.line(new MmPoint(MARGIN, rest.y()), new MmPoint(MARGIN + width, rest.y()));
    rest.skip(2.5);
    return rest;
  }

  private void banner(List<String> notSound, Column column) throws IOException {
    if (notSound.isEmpty()) {
      return;
    }
    String parts = "Not found sound at the inspection: " + String.join("; ", notSound) + ".";
    double inside = width - 6;
    double words = pen.heightOf(parts, inside, Weight.BOLD, 9);
    MmRect box = new MmRect(MARGIN, column.y(), width, 12 + words);
    pen.fill(List.of(box));
    pen.colour(Color.WHITE);
    MmRect title = new MmRect(box.x() + 3, box.y() + 1, inside, 9.5);
    pen.block("DO NOT SHOOT", title, Weight.BOLD, 20, Align.LEFT);
    MmRect rest = new MmRect(box.x() + 3, box.y() + 10, inside, words);
    pen.block(parts, rest, Weight.BOLD, 9, Align.LEFT);
    pen.colour(Color.BLACK);
    column.skip(box.height() + 2.5);
  }

  private static void verdict(Optional<PairResult> pair, Column column) throws IOException {
    if (pair.isEmpty()) {
      column.bold("Where broadheads hit is not known yet.", VERDICT);
      column.skip(0.5);
      column.text(
          "No pair sheet of this job has been read in. Shoot field points and broadheads at one, "
              + "read it in, and print this card again.",
          9);
    } else {
      column.bold(CardWords.bound(Verdict.of(pair.get())), VERDICT);
      column.text(CardWords.about(pair.get()), NORMAL);
    }
    column.skip(1.5);
  }

  private void doubts(JobSummary job, Column column) throws IOException {
    Optional<String> doubts = CardWords.doubts(job);
    if (doubts.isEmpty()) {
      return;
    }
    double inside = width - 4;
    double height = pen.heightOf(doubts.get(), inside, Weight.BOLD, 9);
    MmRect box = new MmRect(MARGIN, column.y(), width, height + 2);
    pen.width(0.6);
    pen.outline(box.grow(-0.3));
    MmRect words = new MmRect(box.x() + 2, box.y() + 1, inside, height);
    pen.block(doubts.get(), words, Weight.BOLD, 9, Align.LEFT);
    column.skip(box.height() + 2);
  }

  private void pair(PairResult pair, MmRect room) throws IOException {
    double legend = Legend.height(pair);
    double height = Math.min(room.height() - legend - 1.5, HIGHEST_PICTURE);
    MmRect frame = new MmRect(MARGIN, room.y(), PICTURE_SHARE * width, height);
    GroupPicture.draw(pair, frame, pen);
    MmRect below = new MmRect(frame.x(), frame.bottom() + 1.5, frame.width(), legend);
    Legend.draw(pair, below, pen);
    double left = frame.right() + GAP;
    numbers(PairNumbers.of(pair), new MmRect(left, room.y(), room.right() - left, room.height()));
  }

  private void numbers(List<PairNumbers.Row> rows, MmRect room) throws IOException {
    Column column = new Column(pen, room.x(), room.y() - 0.5, room.width());
    double spare = room.height() - rows.size() * NUMBER_HEIGHT;
    for (PairNumbers.Row row : rows) {
      column.text(row.label(), LABEL);
      column.bold(row.lines().get(0), NUMBER);
      for (String more : row.lines().subList(1, row.lines().size())) {
        column.text(more, NORMAL);
      }
      column.skip(Math.max(0.4, Math.min(2.5, spare / rows.size())));
    }
  }
}
