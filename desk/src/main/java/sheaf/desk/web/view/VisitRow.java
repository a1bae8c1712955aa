package sheaf.desk.web.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.picture.Picture;
import sheaf.core.record.Drifted;

/**
 * A visit of a bow.
 *
 * @param job its id as it is read out
 * @param day of it, where known
 * @param verdict how it was left; empty when no pair sheet says it
 * @param later whether there was a visit before, so that a drift can be told
 * @param drifted what moved since, in the order to restore it
 * @param plot of that; empty when nothing did
 */
public record VisitRow(
    String job,
    Optional<LocalDate> day,
    String verdict,
    boolean later,
    List<Drifted> drifted,
    Optional<Picture> plot) {

  /** Copies the list. */
  public VisitRow {
    drifted = List.copyOf(drifted);
  }
}
