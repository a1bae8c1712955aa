package sheaf.core.record;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.group.LineShot;
import sheaf.core.job.JobId;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.NotePicture;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;

/**
 * One visit of a bow: what was found, done and left.
 *
 * @param job its name on the papers
 * @param day when it was; empty when that is not known
 * @param customer whose bow, by initials; at most {@value BowRecord#LONGEST_NAME} characters
 * @param technician who worked on it, by initials; as long
 * @param sheets the papers it was made from, by number
 * @param inspection the parts looked at on intake, in the order of the bench card
 * @param measures as found and as left, in the order of the bench card, blank ones too
 * @param changes made between sheets, in order
 * @param tears in the order in which they were shot
 * @param line shots at the last line sheet that tells a drift, in any order; told to 0.01 mm
 * @param pairs results of the pair sheets, by number; their shots are told to 0.01 mm
 * @param groups results of the group sheets and sight-in sheets, alike
 * @param notes in order, each of 1 to {@value BowRecord#LONGEST_NOTE} characters
 * @param written notes that were written by hand, as pictures
 */
public record Visit(
    JobId job,
    Optional<LocalDate> day,
    Optional<String> customer,
    Optional<String> technician,
    List<SheetRead> sheets,
    List<Inspected> inspection,
    List<Measure> measures,
    List<Change> changes,
    List<Tear> tears,
    List<LineShot> line,
    List<PairResult> pairs,
    List<GroupResult> groups,
    List<String> notes,
    List<NotePicture> written) {

  /** A visit without handwritten notes. */
  public Visit(
      JobId job,
      Optional<LocalDate> day,
      Optional<String> customer,
      Optional<String> technician,
      List<SheetRead> sheets,
      List<Inspected> inspection,
      List<Measure> measures,
      List<Change> changes,
      List<Tear> tears,
      List<LineShot> line,
      List<PairResult> pairs,
      List<GroupResult> groups,
      List<String> notes) {
    this(
        job,
        day,
        customer,
        technician,
        sheets,
        inspection,
        measures,
        changes,
        tears,
        line,
        pairs,
        groups,
        notes,
        List.of());
  }

  /** Tidies the texts and copies the lists; throws when a text is too long. */
  public Visit {
    customer = BowRecord.name(customer);
    technician = BowRecord.name(technician);
    sheets = List.copyOf(sheets);
    inspection = List.copyOf(inspection);
    measures = List.copyOf(measures);
    changes = List.copyOf(changes);
    tears = List.copyOf(tears);
    line = List.copyOf(line);
    pairs = List.copyOf(pairs);
    groups = List.copyOf(groups);
    notes = notes.stream().map(BowRecord::note).toList();
    written = List.copyOf(written);
  }

  /** The parts because of which the bow must not be shot. */
  public List<Inspected> notSound() {
    return inspection.stream().filter(Inspected::forbidsShooting).toList();
  }

  /**
   * The pair sheet that shows how the bow was left: the last on which both heads were shot; failing
   * that, the last on which anything hit.
   */
  public Optional<PairResult> pairAsLeft() {
    Comparator<PairResult> byNumber = Comparator.comparingInt(pair -> pair.sheet().number());
    return pairs.stream()
        .filter(pair -> pair.offset().isPresent())
        .max(byNumber)
        .or(
            () ->
                pairs.stream()
                    .filter(pair -> pair.field().isPresent() || pair.broadhead().isPresent())
                    .max(byNumber));
  }

  /** The last group sheet, and the last sight-in sheet, at which anything was shot. */
  public List<GroupResult> groupsAsLeft() {
    Map<SheetKind, GroupResult> last = new EnumMap<>(SheetKind.class);
    groups.stream()
        .filter(group -> group.shots().isPresent())
        .sorted(Comparator.comparingInt(group -> group.sheet().number()))
        .forEach(group -> last.put(group.sheet().layout().kind(), group));
    return List.copyOf(last.values());
  }

  /** The numbers of the sheets that a person must still look at. */
  public List<Integer> doubtfulSheets() {
    return sheets.stream()
        .filter(sheet -> sheet.state() == ReadingState.CHECK)
        .map(sheet -> sheet.code().number())
        .toList();
  }
}
