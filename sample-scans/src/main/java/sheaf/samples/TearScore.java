package sheaf.samples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;
import sheaf.samples.scene.TearShot;
import sheaf.samples.scene.Truth;

/**
 * The reading of a tear sheet held against the truth.
 *
 * @param seed of the sheet
 * @param truth of the sheet
 * @param state in which the reading would have ended if tears were not read on trial
 * @param matches tears found in zones that were shot at once
 * @param faults everything that is wrong, in words
 * @param reasons codes of the reading's reasons
 */
public record TearScore(
    long seed,
    Truth truth,
    ReadingState state,
    List<Match> matches,
    List<String> faults,
    List<String> reasons) {

  /** An end farther off than this, in true millimetres, is wrong. */
  private static final double FAR_OFF = 3;

  private static final int ZONES = 4;

  /**
   * A tear found in a zone that was shot at once.
   *
   * @param length true length in true millimetres
   * @param found the length found
   * @param point error of the point's end in true millimetres
   * @param tail error of the tail's end
   * @param pointWithin whether the true point lies within the stated error
   * @param tailWithin whether the true tail lies within the stated error
   * @param vanes how many vanes were found: unknown, or a number
   * @param vanesRight whether that is how many there were
   */
  public record Match(
      double length,
      double found,
      double point,
      double tail,
      boolean pointWithin,
      boolean tailWithin,
      int vanes,
      boolean vanesRight) {}

  /** Holds a reading against the truth. */
  public static TearScore of(long seed, PageReading reading, Truth truth) {
    List<Match> matches = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    if (reading.state() != ReadingState.REFUSED) {
      IntStream.rangeClosed(1, ZONES)
          .forEach(zone -> compare(zone, reading, truth, matches, faults));
      faults.addAll(Score.wrongFields(reading, truth));
    }
    return new TearScore(
        seed,
        truth,
        state(reading),
        List.copyOf(matches),
        List.copyOf(faults),
        Score.reasons(reading));
  }

  private static ReadingState state(PageReading reading) {
    return reading.reasons().stream()
        .map(Reason::code)
        .filter(code -> code != ReasonCode.TEAR_ON_TRIAL)
        .map(ReasonCode::ending)
        .max(Comparator.naturalOrder())
        .orElse(ReadingState.READ);
  }

  private static void compare(
      int zone, PageReading reading, Truth truth, List<Match> matches, List<String> faults) {
    List<TearShot> shots = truth.tears().stream().filter(tear -> tear.zone() == zone).toList();
    Optional<TearReading> found =
        reading.tears().stream().filter(tear -> tear.zone() == zone).findFirst();
    String where = " in zone " + zone;
    if (shots.isEmpty()) {
      found.ifPresent(tear -> faults.add("invented a tear" + where));
    } else if (found.isEmpty()) {
      faults.add("missed a tear" + where);
    } else if (shots.size() > 1) {
      faults.add("two shots" + where);
    } else {
      Match match = match(shots.get(0), found.get(), truth);
      matches.add(match);
      describe(shots.get(0), found.get(), match, truth).ifPresent(f -> faults.add(f + where));
    }
  }

  private static Match match(TearShot shot, TearReading found, Truth truth) {
    double point = distance(shot.point(), found.point(), truth);
    double tail = distance(shot.tail(), found.tail(), truth);
    double scale = (truth.scaleX() + truth.scaleY()) / 2;
    return new Match(
        distance(shot.point(), shot.tail(), truth),
        distance(found.point(), found.tail(), truth),
        point,
        tail,
        point <= found.pointError() * scale,
        tail <= found.tailError() * scale,
        found.vanes(),
        found.vanes() == shot.vanes());
  }

  private static double distance(MmPoint a, MmPoint b, Truth truth) {
    MmVector way = b.minus(a);
    return Math.hypot(way.dx() * truth.scaleX(), way.dy() * truth.scaleY());
  }

  private static Optional<String> describe(
      TearShot shot, TearReading found, Match match, Truth truth) {
    String sizes =
        String.format(
            Locale.ROOT,
            "%.1f mm read as %.1f, point %.1f off, tail %.1f off",
            match.length(),
            match.found(),
            match.point(),
            match.tail());
    if (match.length() > 0 == found.isBulletHole()) {
      return Optional.of(found.isBulletHole() ? "tear of " + sizes : "bullet hole, " + sizes);
    }
    boolean turned =
        distance(shot.point(), found.tail(), truth) + distance(shot.tail(), found.point(), truth)
            < match.point() + match.tail();
    if (turned) {
      return Optional.of("wrong way round, " + sizes);
    }
    if (match.point() > FAR_OFF || match.tail() > FAR_OFF) {
      return Optional.of(sizes);
    }
    return found.vanes() == TearReading.UNKNOWN_VANES || found.vanes() == shot.vanes()
        ? Optional.empty()
        : Optional.of("%d vanes read as %d".formatted(shot.vanes(), found.vanes()));
  }

  /** Whether nothing but the trial makes a person look, and the page is wrong. */
  public boolean silentlyWrong() {
    return state == ReadingState.READ && !faults.isEmpty();
  }

  /** Whether a person must look because a zone was hit twice. */
  public boolean mustBeChecked() {
    long zones = truth.tears().stream().map(TearShot::zone).distinct().count();
    return zones < truth.tears().size();
  }

  @Override
  public String toString() {
    return Score.line(seed, truth, state, faults, reasons);
  }
}
