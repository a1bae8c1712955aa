package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.forms.draw.Typeface;

/**
 * Everything that a card tells, in sections.
 *
 * @param record what is told
 * @param head what stands at the head besides
 * @param asFound whether the measures are told as found too, which needs a full page
 * @param width of the card's inside in millimetres
 * @param pageHeight of the card in millimetres
 */
record CardSections(
    BowRecord record, CardHead head, boolean asFound, double width, double pageHeight) {

  private static final double SMALL = 7;
  private static final double NORMAL = 8;

  /** Two tears beside a line sheet need more room than it. */
  private static final double TEARS_SHARE = 0.58;

  /** The sections in order, each from top to bottom; only the first has no heading. */
  List<List<Block>> in(Spacing spacing, Typeface typeface) {
    Visit visit = record.last();
    List<List<Block>> sections = new ArrayList<>();
    sections.add(opening(spacing));
    sections.add(setUp(spacing));
    sections.addAll(shots(visit));
    List<List<Block>> lists = lists();
    List<Block> end = end(typeface);
    if (spacing.beside() && lists.size() == 1) {
      lists.add(end);
      end = List.of();
    }
    sections.addAll(spacing.beside() ? besideEachOther(lists, 0.5) : lists);
    sections.add(end);
    return sections;
  }

  private List<Block> end(Typeface typeface) {
    List<Block> end = new ArrayList<>();
    CardWords.blank(record.last())
        .ifPresent(
            words -> {
              end.add(Block.gap(1.6));
              end.add(TextBlock.text(words, NORMAL));
            });
    if (CardWords.lacksLetters(record, head, typeface)) {
      end.add(Block.gap(1.6));
      end.add(TextBlock.text(CardWords.LACKING, SMALL));
    }
    return end;
  }

  private List<Block> opening(Spacing spacing) {
    Visit visit = record.last();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new HeadBlock(record, head, spacing.runOn()));
    if (!visit.notSound().isEmpty()) {
      blocks.add(Frame.doNotShoot(CardWords.notSound(visit)));
    }
    CardWords.doubts(visit).map(Frame::doubts).ifPresent(blocks::add);
    blocks.addAll(verdict(visit.pairAsLeft(), spacing));
    return blocks;
  }

  private List<Block> verdict(Optional<PairResult> pair, Spacing spacing) {
    if (pair.isEmpty()) {
      return List.of(
          TextBlock.bold("Where broadheads hit is not known yet.", spacing.verdict()),
          TextBlock.text(
              "No pair sheet of this job has been read in. Shoot field points and broadheads at "
                  + "one, read it in, and print this card again.",
              9));
    }
    return List.of(
        TextBlock.bold(CardWords.bound(Verdict.of(pair.get())), spacing.verdict()),
        TextBlock.text(CardWords.about(pair.get()), NORMAL),
        Block.gap(1.5),
        new PairBlock(pair.get(), spacing.picture() * pageHeight));
  }

  private List<Block> setUp(Spacing spacing) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(TextBlock.heading("Set-up as left"));
    blocks.add(TextBlock.text(CardWords.setUp(record), NORMAL));
    blocks.add(TextBlock.text(CardWords.LEGEND, SMALL));
    blocks.add(Block.gap(1));
    blocks.addAll(MeasureRow.table(record.last().measures(), asFound, spacing.gathered(), width));
    return blocks;
  }

  private List<List<Block>> shots(Visit visit) {
    List<List<Block>> sections = new ArrayList<>();
    if (!visit.tears().isEmpty()) {
      sections.add(List.of(TextBlock.heading("Tears through paper"), new TearBlock(visit.tears())));
    }
    if (!visit.line().isEmpty()) {
      sections.add(List.of(TextBlock.heading("Line sheet"), new LineBlock(visit.line())));
    }
    for (GroupResult group : visit.groupsAsLeft()) {
      String heading = group.isSightIn() ? "Sight-in sheet" : "Group sheet";
      sections.add(List.of(TextBlock.heading(heading), new GroupBlock(group)));
    }
    return asFound ? besideEachOther(sections, TEARS_SHARE) : sections;
  }

  private List<List<Block>> lists() {
    Visit visit = record.last();
    List<List<Block>> sections = new ArrayList<>();
    if (!visit.changes().isEmpty()) {
      sections.add(
          list("What was changed", visit.changes().stream().map(CardWords::change).toList()));
    }
    if (!visit.notes().isEmpty()) {
      sections.add(list("Notes", visit.notes()));
    }
    if (!visit.written().isEmpty()) {
      List<Block> written = new ArrayList<>();
      written.add(TextBlock.heading("Notes by hand"));
      visit.written().forEach(note -> written.add(new NoteBlock(note)));
      sections.add(written);
    }
    List<String> earlier = EarlierVisits.of(record);
    if (!earlier.isEmpty()) {
      sections.add(list("Earlier visits", earlier));
    }
    return sections;
  }

  private static List<Block> list(String heading, List<String> texts) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(TextBlock.heading(heading));
    blocks.addAll(ListItem.numbered(texts));
    return blocks;
  }

  /** The first two of several sections beside each other. */
  private static List<List<Block>> besideEachOther(List<List<Block>> sections, double share) {
    if (sections.size() < 2) {
      return sections;
    }
    List<List<Block>> shown = new ArrayList<>();
    Stack left = new Stack(sections.get(0));
    shown.add(List.of(new Beside(left, share, new Stack(sections.get(1)))));
    shown.addAll(sections.subList(2, sections.size()));
    return shown;
  }
}
