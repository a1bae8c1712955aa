package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.energy.BowNumbers;
import sheaf.core.flight.BowFlight;
import sheaf.core.group.Ellipse;
import sheaf.core.group.Equivalence;
import sheaf.core.group.Group;
import sheaf.core.group.Offset;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Drifted;
import sheaf.core.record.Visit;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;

/**
 * One job as one JSON object on one line.
 *
 * <pre>
 * job        text
 * notSound   list of the parts that failed the inspection: when it is not empty, do not shoot
 * doubts     whether a person must still look at any sheet
 * asLeft     number of the pair sheet that shows how the bow was left, or null
 * pairs      list, by sheet number, of {number, status (read, check), distance {value, unit (yd,
 *            m)} or null, field (group), broadhead (group), offset or null, verdict (shown,
 *            not_shown, not_enough_arrows) or null, sentence}
 *            a group is null or {shots, x, y, extremeSpread, meanRadius}, its centre measured from
 *            the dot that was aimed at
 *            an offset is broadheads minus field points: {x, y, length, inches {x, y, length},
 *            minutes of angle or null, region {semiMajor, semiMinor, degrees from +x toward +y} or
 *            null: where the true offset is with 95 % confidence}
 * lines      list, by sheet number, of the line sheets among the sheets: see {@link LineJson}
 * groups     list, by sheet number, of the group sheets and sight-in sheets among them: see {@link
 *            GroupJson}
 * sheets     list of pages as in {@link PageJson}: the reading of each sheet that counts
 * record     the record as in {@link RecordJson}: what a finished card tells; it comes from the
 *            sheets, or from a card that was imported after they were read
 * numbers, cautions, flight, drifted: see {@link NumbersJson}
 * </pre>
 *
 * <p>Lengths are true millimetres on paper, x to the right, y down.
 */
public final class JobJson {

  private JobJson() {}

  /**
   * The job as one line, without a line end.
   *
   * @param job its papers
   * @param record what counts
   * @param numbers what its measures come to
   * @param flight of its arrow
   * @param drifted what moved since another visit, where one was named
   */
  public static String line(
      JobSummary job,
      BowRecord record,
      BowNumbers numbers,
      Optional<BowFlight> flight,
      Optional<List<Drifted>> drifted) {
    Visit visit = record.last();
    ObjectNode tree = Tree.object();
    tree.put("job", job.job().spoken());
    ArrayNode notSound = tree.putArray("notSound");
    visit.notSound().forEach(part -> notSound.add(part.key()));
    tree.put("doubts", !visit.doubtfulSheets().isEmpty());
    tree.put("asLeft", asLeft(visit).map(pair -> pair.sheet().number()).orElse(null));
    ArrayNode pairs = tree.putArray("pairs");
    visit.pairs().forEach(pair -> pairs.add(tree(pair)));
    RecordJson.put(tree, "lines", job.lines(), LineJson::tree);
    RecordJson.put(tree, "groups", job.groups(), GroupJson::tree);
    ArrayNode sheets = tree.putArray("sheets");
    for (PageReading sheet : job.sheets()) {
      sheets.add(PageJson.tree(sheet));
    }
    tree.set("record", RecordJson.tree(record));
    NumbersJson.put(tree, numbers, flight, drifted);
    return Tree.line(tree);
  }

  private static Optional<PairResult> asLeft(Visit visit) {
    return visit.pairAsLeft().filter(pair -> pair.offset().isPresent());
  }

  private static ObjectNode tree(PairResult pair) {
    ObjectNode tree = Tree.object();
    tree.put("number", pair.sheet().number());
    tree.put("status", pair.state().label());
    tree.set("distance", pair.distance().map(JobJson::tree).orElse(null));
    tree.set("field", pair.field().map(JobJson::tree).orElse(null));
    tree.set("broadhead", pair.broadhead().map(JobJson::tree).orElse(null));
    tree.set("offset", pair.offset().map(o -> tree(o, pair.offsetMinutes())).orElse(null));
    tree.put("verdict", pair.equivalence().map(JobJson::label).orElse(null));
    tree.put("sentence", Verdict.of(pair));
    return tree;
  }

  static ObjectNode tree(Distance distance) {
    return Tree.object()
        .put("value", Round.value(distance.value()))
        .put("unit", distance.unit().symbol());
  }

  private static ObjectNode tree(Group group) {
    MmPoint centre = group.centre();
    return Tree.object()
        .put("shots", group.size())
        .put("x", Round.hundredth(centre.x()))
        .put("y", Round.hundredth(centre.y()))
        .put("extremeSpread", Round.hundredth(group.extremeSpread()))
        .put("meanRadius", Round.hundredth(group.meanRadius()));
  }

  private static ObjectNode tree(Offset offset, Optional<Double> minutes) {
    MmVector shift = offset.shift();
    ObjectNode tree =
        Tree.object()
            .put("x", Round.hundredth(shift.dx()))
            .put("y", Round.hundredth(shift.dy()))
            .put("length", Round.hundredth(shift.length()));
    tree.putObject("inches")
        .put("x", inches(shift.dx()))
        .put("y", inches(shift.dy()))
        .put("length", inches(shift.length()));
    tree.put("minutes", minutes.map(Round::hundredth).orElse(null));
    tree.set("region", offset.region().map(JobJson::tree).orElse(null));
    return tree;
  }

  static ObjectNode tree(Ellipse region) {
    return Tree.object()
        .put("semiMajor", Round.hundredth(region.semiMajor()))
        .put("semiMinor", Round.hundredth(region.semiMinor()))
        .put("degrees", Round.hundredth(Math.toDegrees(region.angle())));
  }

  static double inches(double mm) {
    return Round.thousandth(Unit.MILLIMETRE.convert(mm, Unit.INCH));
  }

  private static String label(Equivalence equivalence) {
    return equivalence.name().toLowerCase(Locale.ROOT);
  }
}
