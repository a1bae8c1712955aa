package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;

/** Decides what of the tears found is sure, and asks about the rest. */
final class TearJudge {

  /** With less speaking for it, what is there is no tear. */
  private static final double POSSIBLE = 3000;

  /** From here on it is one, if vanes' slits are seen around it. */
  private static final double LIKELY = 4000;

  /** From here on it is one. */
  private static final double SURE = 6000;

  /** How much more must speak for a tear than for a bullet hole. */
  private static final double TORN = 5;

  /** Nearer to it than this, either may be. */
  private static final double TORN_UNSURE = 0.8;

  /** More than this torn beside the tear, in square millimetres, is another shot. */
  private static final double ANOTHER = 14;

  /** The true end lies within so many of its spreads 19 times in 20, as measured on made tears. */
  private static final double WITHIN = 3.6;

  private static final double TAIL_WITHIN = 4.2;

  /** An end whose stated error is larger than this, in millimetres, is a doubt. */
  private static final double MOST_ERROR = 2.6;

  /** A vane's star is there from this quality on, in millimetres of slit. */
  private static final double STAR = 5;

  /** So much better must the tail's star be than the one at the point. */
  private static final double CLEARLY = 7;

  /** The same where both ends lie so near that slits of one are seen from the other. */
  private static final double CLEARLY_WHEN_SHORT = 8.5;

  /** The same where looking from both ends first led to the same. */
  private static final double CLEARLY_WHEN_AGREED = 5;

  /** Where so much speaks for an end, less of a star is enough. */
  private static final double DECISIVE = 10;

  private static final double SOME_STAR = 2.5;

  /** A tear is short below so many radii of the shaft. */
  private static final double SHORT = 3;

  private final int vanes;
  private final List<TearReading> tears = new ArrayList<>();
  private final List<MmRect> torn = new ArrayList<>();
  private final List<Reason> doubts = new ArrayList<>();

  private TearJudge(int vanes) {
    this.vanes = vanes;
  }

  /** Judges what was found in each zone. */
  static TearReader.Tears judge(List<FoundTear> zones) {
    List<FoundTear> found = zones.stream().filter(TearJudge::isThere).toList();
    TearJudge judge = new TearJudge(VaneStar.usual(found.stream().map(FoundTear::star).toList()));
    found.forEach(judge::add);
    return new TearReader.Tears(judge.tears, judge.torn, judge.doubts);
  }

  private static boolean isThere(FoundTear found) {
    boolean star = found.star().quality() >= STAR;
    return found.score() >= (star ? POSSIBLE : LIKELY);
  }

  private void add(FoundTear found) {
    boolean bullet = found.torn() < TORN;
    MmPoint tail = new MmPoint(found.tail().x(), found.tail().y());
    MmPoint point = bullet ? tail : new MmPoint(found.point().x(), found.point().y());
    askWhether(found, tail);
    askEnds(found, bullet, point, tail);
    torn.addAll(found.surroundings());
    double tailError = TAIL_WITHIN * found.tail().spread();
    tears.add(
        new TearReading(
            found.zone().number(),
            point,
            bullet ? tailError : WITHIN * found.point().spread(),
            tail,
            tailError,
            found.star().agreesWith(vanes) ? vanes : TearReading.UNKNOWN_VANES,
            1 / (1 + Math.exp(-(bullet ? found.star().quality() : margin(found)) / 2))));
  }

  private static double margin(FoundTear found) {
    return found.star().quality() - found.turned() + found.rims();
  }

  private static double needed(FoundTear found) {
    if (found.agreed()) {
      return CLEARLY_WHEN_AGREED;
    }
    return found.length() < SHORT * found.radius() ? CLEARLY_WHEN_SHORT : CLEARLY;
  }

  private void askWhether(FoundTear found, MmPoint tail) {
    int zone = found.zone().number();
    boolean star = found.star().quality() >= STAR;
    if (found.score() < (star ? LIKELY : SURE)) {
      doubt(ReasonCode.TEAR_UNSURE, "Is this a tear in zone %d?", zone, tail);
    }
    boolean beside = found.unexplained().area() > ANOTHER;
    if (beside || found.unexplained().second() > LIKELY) {
      doubt(
          ReasonCode.TWO_SHOTS,
          "More than one shot seems to have hit zone %d: which tear counts?",
          zone,
          beside ? found.unexplained().middle() : tail);
    }
    if (Math.abs(found.torn() - TORN) < TORN_UNSURE) {
      doubt(
          ReasonCode.TEAR_UNSURE, "Is this a bullet hole or a short tear in zone %d?", zone, tail);
    }
  }

  private void askEnds(FoundTear found, boolean bullet, MmPoint point, MmPoint tail) {
    int zone = found.zone().number();
    boolean decisive = !bullet && margin(found) >= DECISIVE;
    boolean star = found.star().quality() >= (decisive ? SOME_STAR : STAR);
    if (!star || !bullet && margin(found) < needed(found)) {
      doubt(
          ReasonCode.TEAR_ENDS_UNSURE,
          bullet
              ? "The vanes' slits hardly show in zone %d: is this an arrow's hole?"
              : "The vanes' slits hardly show in zone %d: which end of the tear did the tail make?",
          zone,
          tail);
    }
    if (!bullet && WITHIN * found.point().spread() > MOST_ERROR) {
      doubt(
          ReasonCode.TEAR_END_UNCLEAR, "Is this where the point went in, in zone %d?", zone, point);
    }
    if (TAIL_WITHIN * found.tail().spread() > MOST_ERROR) {
      doubt(ReasonCode.TEAR_END_UNCLEAR, "Is this where the tail passed, in zone %d?", zone, tail);
    }
  }

  private void doubt(ReasonCode code, String question, int zone, MmPoint place) {
    doubts.add(Reason.at(code, question.formatted(zone), place));
  }
}
