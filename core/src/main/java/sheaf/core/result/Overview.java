package sheaf.core.result;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.job.JobId;

/**
 * A job at a glance.
 *
 * @param job which one
 * @param changed when anything of it was taken in last
 * @param day of the visit
 * @param customer whose bow, by initials or reference
 * @param bow in general words
 * @param sheets how many were read
 * @param missing numbers of sheets that were printed and not read; where it is not known what was
 *     printed, those below the highest number that was read
 * @param doubts how many sheets need a person's look
 * @param state what is to be done next
 */
public record Overview(
    JobId job,
    Instant changed,
    LocalDate day,
    Optional<String> customer,
    Optional<String> bow,
    int sheets,
    List<Integer> missing,
    int doubts,
    State state) {

  /** What is to be done next for a job. */
  public enum State {
    /** Some sheets need a person's look. */
    DOUBTS("doubts"),
    /** Some sheets were printed and never read. */
    SHEETS("sheets"),
    /** All sheets are there, and no finished card was made since the last. */
    CARD("card"),
    /** The finished card was made. */
    DONE("done");

    private final String label;

    State(String label) {
      this.label = label;
    }

    /** The word for it, to look for and in JSON. */
    public String label() {
      return label;
    }
  }

  /** Copies the list. */
  public Overview {
    missing = List.copyOf(missing);
  }

  /** Whether anything is left to do. */
  public boolean isOpen() {
    return state != State.DONE;
  }
}
