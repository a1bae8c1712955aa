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
  private static final double POSSIBLE = 1000;

  /** From here on it is one. */
  private static final double SURE = 3500;

  /** Below this, in millimetres, an arrow flew straight: both ends cannot be told apart. */
  private static final double BULLET = 1.3;

  /** Between these lengths a bullet hole and a short tear look alike. */
  private static final double BULLET_SURELY = 1.0;

  private static final double TEAR_SURELY = 1.5;

  /** More than this torn beside the tear, in square millimetres, is another shot. */
  private static final double ANOTHER = 6;

  /** The true end lies within so many of its spreads 19 times in 20. */
  private static final double WITHIN = 2.45;

  /** An end whose stated error is larger than this, in millimetres, is a doubt. */
  private static final double MOST_ERROR = 1.6;

  /** A vane's star is there from this quality on, in millimetres of slit. */
  private static final double STAR = 6;

  /** So much better must the tail's star be than the one at the point. */
  private static final double CLEARLY = 5;

  /** So much better must a number of vanes fit than the other to be told. */
  private static final double VANES_CLEAR = 4;

  private final List<TearReading> tears = new ArrayList<>();
  private final List<MmRect> torn = new ArrayList<>();
  private final List<Reason> doubts = new ArrayList<>();

  TearReader.Tears tears() {
    return new TearReader.Tears(tears, torn, doubts);
  }

  void add(FoundTear found) {
    if (found.score() < POSSIBLE) {
      return;
    }
    MmPoint point = new MmPoint(found.point().x(), found.point().y());
    MmPoint tail = new MmPoint(found.tail().x(), found.tail().y());
    boolean bullet = found.length() < BULLET;
    ask(found, bullet ? tail : point, tail);
    torn.addAll(found.surroundings());
    double pointError = WITHIN * found.point().spread();
    double tailError = WITHIN * found.tail().spread();
    tears.add(
        new TearReading(
            found.zone().number(),
            bullet ? tail : point,
            bullet ? tailError : pointError,
            tail,
            tailError,
            vanes(found.star()),
            confidence(found, bullet)));
  }

  private static int vanes(VaneStar star) {
    boolean clear = star.quality() >= STAR && star.quality() - star.other() >= VANES_CLEAR;
    return clear ? star.vanes() : TearReading.UNKNOWN_VANES;
  }

  private static double confidence(FoundTear found, boolean bullet) {
    double margin = bullet ? found.star().quality() : margin(found);
    return 1 / (1 + Math.exp(-margin / 2));
  }

  private static double margin(FoundTear found) {
    return found.star().quality() - found.turned() + found.rims();
  }

  private void ask(FoundTear found, MmPoint point, MmPoint tail) {
    int zone = found.zone().number();
    if (found.score() < SURE) {
      doubt(ReasonCode.TEAR_UNSURE, "Is this a tear in zone %d?".formatted(zone), tail);
    }
    if (found.unexplained().area() > ANOTHER) {
      doubt(
          ReasonCode.TWO_SHOTS,
          "More than one shot seems to have hit zone %d: which tear counts?".formatted(zone),
          found.unexplained().middle());
    }
    if (found.length() > BULLET_SURELY && found.length() < TEAR_SURELY) {
      doubt(
          ReasonCode.TEAR_UNSURE,
          "Is this a bullet hole or a short tear in zone %d?".formatted(zone),
          tail);
    }
    boolean bullet = found.length() < BULLET;
    boolean clear = found.star().quality() >= STAR && (bullet || margin(found) >= CLEARLY);
    if (!clear) {
      doubt(
          ReasonCode.TEAR_ENDS_UNSURE,
          "The vanes' slits hardly show in zone %d: which end of the tear did the tail make?"
              .formatted(zone),
          tail);
    }
    if (WITHIN * found.point().spread() > MOST_ERROR) {
      doubt(ReasonCode.TEAR_END_UNCLEAR, "Is the point's end right?", point);
    }
    if (WITHIN * found.tail().spread() > MOST_ERROR) {
      doubt(ReasonCode.TEAR_END_UNCLEAR, "Is the tail's end right?", tail);
    }
  }

  private void doubt(ReasonCode code, String question, MmPoint place) {
    doubts.add(Reason.at(code, question, place));
  }
}
