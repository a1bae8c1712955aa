package sheaf.forms;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.LineShot;
import sheaf.core.reading.NotePicture;
import sheaf.core.record.Change;
import sheaf.core.record.Measure;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;

/** A visit like another, but for the parts that are set. */
final class VisitLike {

  private final Visit like;
  private Optional<LocalDate> day;
  private Optional<String> customer;
  private Optional<String> technician;
  private List<Measure> measures;
  private List<Change> changes;
  private List<Tear> tears;
  private List<LineShot> line;
  private List<PairResult> pairs;
  private List<GroupResult> groups;
  private List<String> notes;
  private List<NotePicture> written;

  VisitLike(Visit like) {
    this.like = like;
    day = like.day();
    customer = like.customer();
    technician = like.technician();
    measures = like.measures();
    changes = like.changes();
    tears = like.tears();
    line = like.line();
    pairs = like.pairs();
    groups = like.groups();
    notes = like.notes();
    written = like.written();
  }

  VisitLike day(Optional<LocalDate> changed) {
    day = changed;
    return this;
  }

  VisitLike customer(Optional<String> changed) {
    customer = changed;
    return this;
  }

  VisitLike technician(Optional<String> changed) {
    technician = changed;
    return this;
  }

  VisitLike measures(List<Measure> changed) {
    measures = changed;
    return this;
  }

  VisitLike changes(List<Change> changed) {
    changes = changed;
    return this;
  }

  VisitLike tears(List<Tear> changed) {
    tears = changed;
    return this;
  }

  VisitLike line(List<LineShot> changed) {
    line = changed;
    return this;
  }

  VisitLike pairs(List<PairResult> changed) {
    pairs = changed;
    return this;
  }

  VisitLike groups(List<GroupResult> changed) {
    groups = changed;
    return this;
  }

  VisitLike notes(List<String> changed) {
    notes = changed;
    return this;
  }

  VisitLike written(List<NotePicture> changed) {
    written = changed;
    return this;
  }

  Visit visit() {
    return new Visit(
        like.job(),
        day,
        customer,
        technician,
        like.sheets(),
        like.inspection(),
        measures,
        changes,
        tears,
        line,
        pairs,
        groups,
        notes,
        written);
  }
}
