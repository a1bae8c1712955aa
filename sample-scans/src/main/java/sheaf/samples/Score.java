package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sheaf.core.job.SheetCode;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.samples.scene.Shot;
import sheaf.samples.scene.Truth;

/**
 * One reading held against the truth.
 *
 * @param seed of the sheet
 * @param truth of the sheet
 * @param state in which the reading ended
 * @param matches holes found where there is one
 * @param missed holes not found
 * @param invented holes found where there is none
 * @param faults everything that is wrong, in words
 * @param reasons codes of the reading's reasons
 */
public record Score(
    long seed,
    Truth truth,
    ReadingState state,
    List<Match> matches,
    int missed,
    int invented,
    List<String> faults,
    List<String> reasons) {

  /** A found hole belongs to a true one within this, in millimetres. */
  private static final double SAME = 4;

  /** A centre farther off than this in a page that claims to be sure is a silent error. */
  private static final double FAR_OFF = 1.5;

  /**
   * A hole found where there is one.
   *
   * @param error of the axis, in true millimetres
   * @param plainError that a plain centroid of the opening would have had
   * @param headRight whether the head is right
   * @param bladesRight whether the number of blades is right
   * @param claimed the reading's own 95 % radius
   */
  public record Match(
      double error, double plainError, boolean headRight, boolean bladesRight, double claimed) {}

  /** Holds a reading against the truth. */
  public static Score of(long seed, PageReading reading, Truth truth) {
    List<Match> matches = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    List<Hole> left = new ArrayList<>(reading.holes());
    int missed = 0;
    for (Shot shot : truth.shots()) {
      Optional<Hole> nearest = nearest(left, shot.axis());
      if (nearest.isPresent()) {
        left.remove(nearest.get());
        Match match = match(shot, nearest.get(), truth);
        matches.add(match);
        describe(shot, nearest.get(), match).ifPresent(faults::add);
      } else {
        missed++;
        faults.add("missed " + shot.head().label() + at(shot.axis()));
      }
    }
    left.forEach(hole -> faults.add("invented " + hole.head().label() + at(hole.axis())));
    faults.addAll(wrongFields(reading, truth));
    return new Score(
        seed,
        truth,
        reading.state(),
        List.copyOf(matches),
        missed,
        left.size(),
        List.copyOf(faults),
        reasons(reading));
  }

  /** The codes of a reading's reasons, each once. */
  static List<String> reasons(PageReading reading) {
    return reading.reasons().stream()
        .map(Reason::code)
        .map(code -> code.label())
        .distinct()
        .toList();
  }

  /** A sheet with all that is wrong or doubtful about it, in one line. */
  static String line(
      long seed, Truth truth, ReadingState state, List<String> faults, List<String> reasons) {
    return "seed %d %s %d dpi %s: %s: %s %s"
        .formatted(
            seed,
            truth.behind(),
            truth.dpi(),
            truth.colour() ? "colour" : "grey",
            state.label(),
            String.join("; ", faults),
            reasons);
  }

  /** Whether the page claims to be sure and is wrong. */
  public boolean silentlyWrong() {
    return state == ReadingState.READ && !faults.isEmpty();
  }

  private static Optional<Hole> nearest(List<Hole> holes, MmPoint axis) {
    return holes.stream()
        .filter(hole -> hole.axis().distanceTo(axis) < SAME)
        .min((a, b) -> Double.compare(a.axis().distanceTo(axis), b.axis().distanceTo(axis)));
  }

  private static Match match(Shot shot, Hole hole, Truth truth) {
    double scale = (truth.scaleX() + truth.scaleY()) / 2;
    return new Match(
        hole.axis().distanceTo(shot.axis()) * scale,
        shot.opening().distanceTo(shot.axis()) * scale,
        headRight(shot, hole, truth),
        hole.blades() == shot.blades(),
        hole.axisError());
  }

  /** Where heads are not compared, none need be told. */
  private static boolean headRight(Shot shot, Hole hole, Truth truth) {
    boolean compared =
        SheetCode.parse(truth.code())
            .filter(code -> code.layout().kind().comparesHeads())
            .isPresent();
    return hole.head() == shot.head() || !compared && hole.head() == Head.UNKNOWN;
  }

  private static Optional<String> describe(Shot shot, Hole hole, Match match) {
    if (!hole.zone().equals(shot.zone())) {
      return Optional.of("wrong band" + at(shot.axis()));
    }
    if (!match.headRight()) {
      return Optional.of(shot.head().label() + " read as " + hole.head().label() + at(shot.axis()));
    }
    return match.error() > FAR_OFF
        ? Optional.of(String.format(Locale.ROOT, "%.1f mm off%s", match.error(), at(shot.axis())))
        : Optional.empty();
  }

  /** What is wrong with a reading's code, ticks and print scale, in words. */
  static List<String> wrongFields(PageReading reading, Truth truth) {
    List<String> faults = new ArrayList<>();
    if (reading.state() == ReadingState.REFUSED) {
      return List.of();
    }
    boolean code = reading.sheet().map(s -> s.text().equals(truth.code())).orElse(false);
    if (!code) {
      faults.add("wrong code");
    }
    for (Map.Entry<String, String> tick : truth.ticks().entrySet()) {
      boolean right = reading.field(tick.getKey()).orElseThrow().says(tick.getValue());
      if (!right) {
        faults.add("tick " + tick.getKey());
      }
    }
    reading.fields().stream()
        .filter(field -> field.state() == FieldReading.State.READ)
        .filter(field -> !truth.ticks().containsKey(field.key()))
        .forEach(field -> faults.add("invented tick " + field.key()));
    double printed = reading.printScale().map(s -> s.mean()).orElse(truth.scaleX());
    if (Math.abs(printed / ((truth.scaleX() + truth.scaleY()) / 2) - 1) > 0.005) {
      faults.add("wrong print scale");
    }
    return faults;
  }

  private static String at(MmPoint place) {
    return String.format(Locale.ROOT, " at %.0f,%.0f", place.x(), place.y());
  }

  @Override
  public String toString() {
    return line(seed, truth, state, faults, reasons);
  }
}
