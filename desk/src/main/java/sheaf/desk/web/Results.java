package sheaf.desk.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmRect;
import sheaf.core.picture.GroupPicture;
import sheaf.core.picture.LinePicture;
import sheaf.core.picture.PairPicture;
import sheaf.core.picture.Picture;
import sheaf.core.picture.TearPicture;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Change;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.LineVerdict;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;
import sheaf.desk.web.view.MeasureLine;
import sheaf.desk.web.view.Shown;

/** What a visit came to, with pictures: the same for the shop and for the customer. */
final class Results {

  /** A pair sheet's picture in millimetres, as wide as on a half-letter card. */
  private static final MmRect PAIR = new MmRect(0, 0, 72, 68);

  private static final MmRect LINE = new MmRect(0, 0, 62, 44);
  private static final MmRect GROUP = new MmRect(0, 0, 48, 48);
  private static final MmRect TEAR = new MmRect(0, 0, 30, 30);

  private Results() {}

  /** The sheets that were shot at: the pair as left first, then the rest in the order of a card. */
  static List<Shown> of(Visit visit) {
    List<Shown> shown = new ArrayList<>();
    Optional<PairResult> left = visit.pairAsLeft();
    left.ifPresent(pair -> shown.add(pair(pair)));
    if (!visit.tears().isEmpty()) {
      shown.add(tears(visit.tears()));
    }
    if (!visit.line().isEmpty()) {
      shown.add(
          new Shown(
              "Line sheet",
              List.of(LineVerdict.of(visit.line())),
              List.of(LinePicture.of(visit.line(), LINE))));
    }
    visit.groupsAsLeft().forEach(group -> shown.add(group(group)));
    return shown;
  }

  /** A pair sheet. */
  static Shown pair(PairResult pair) {
    String at = pair.distance().map(distance -> " at " + distance).orElse("");
    boolean anything = pair.field().isPresent() || pair.broadhead().isPresent();
    return new Shown(
        "Pair sheet " + pair.sheet().number() + at,
        List.of(Verdict.of(pair)),
        anything ? List.of(PairPicture.of(pair, PAIR)) : List.of());
  }

  private static Shown group(GroupResult group) {
    return new Shown(
        (group.isSightIn() ? "Sight-in sheet " : "Group sheet ") + group.sheet().number(),
        GroupVerdict.sentences(group),
        List.of(GroupPicture.of(group, GROUP)));
  }

  private static Shown tears(List<Tear> tears) {
    Tear first = tears.get(0);
    Tear last = tears.get(tears.size() - 1);
    List<Tear> both = tears.size() == 1 ? List.of(first) : List.of(first, last);
    double scale = TearPicture.scale(both, TEAR.width());
    List<String> words = new ArrayList<>();
    List<Picture> pictures = new ArrayList<>();
    for (Tear tear : both) {
      String which = tear == first ? (both.size() == 1 ? "The only tear" : "First") : "Last";
      words.add(
          "%s, sheet %d, zone %d: %s."
              .formatted(which, tear.sheet(), tear.zone(), TearPicture.way(tear)));
      pictures.add(TearPicture.of(tear, TEAR, scale));
    }
    return new Shown("Tears through paper", words, pictures);
  }

  /** The measures that somebody took. */
  static List<MeasureLine> measures(BowRecord record) {
    List<MeasureLine> lines = new ArrayList<>();
    for (Measure measure : record.last().measures()) {
      Optional<Taken> last = measure.left().or(measure::found);
      if (last.isPresent()) {
        lines.add(
            new MeasureLine(
                measure.label(),
                measure.found().map(Results::value).orElse(""),
                measure.left().map(Results::value).orElse(""),
                last.get().how().spoken()));
      }
    }
    return lines;
  }

  private static String value(Taken taken) {
    return taken.words().orElse("on paper");
  }

  /** What was changed between the sheets, in order. */
  static List<String> changes(Visit visit) {
    return visit.changes().stream().map(Change::words).toList();
  }
}
