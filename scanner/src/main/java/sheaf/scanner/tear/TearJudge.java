package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;

/** Decides what of the tears found is sure, and asks about the rest. */
final class TearJudge {

  /** With less speaking for both ends together, what is there is no tear. */
  private static final double POSSIBLE = 10;

  /** Nor is it if neither end is as likely. */
  private static final double LIKELY = 0.32;

  /** From here on it is one. */
  private static final double SURE = 0.4;

  /** A spot for which cells speak so much is asked about where the net saw no end. */
  private static final double SPOT = 10000;

  /** In a zone for which a change is ticked, ends count as seen from this probability on. */
  private static final double TICKED = 0.2;

  /** In any other zone. */
  private static final double NOT_TICKED = 0.25;

  /** So much less must speak for any other two ends of a zone. */
  private static final double CLEARLY = 3;

  /** An end is another arrow's from this probability on. */
  private static final double OTHER = 0.46;

  /** From this one on where something is torn there that the first arrow does not explain. */
  private static final double OTHER_TORN = 0.25;

  /** So much of it, in square millimetres, or cells that speak so much for another tear. */
  private static final double SOME = 4;

  private static final double SOME_CELLS = 1000;

  /** More than this torn beside the tear, in square millimetres, is another shot. */
  private static final double ANOTHER = 22;

  /** From here on cells speak for another tear elsewhere in a zone. */
  private static final double SECOND = 9000;

  /** How much more cells speak for a tear than for a bullet hole where both are as likely. */
  private static final double TORN = 3.2;

  private static final double TORN_WEIGHT = 0.8;

  /** Nearer to it than this, either may be. */
  private static final double TORN_UNSURE = 1.2;

  /** A tear found to be shorter than this, in millimetres, may be none, or turned. */
  private static final double SHORTEST = 1.2;

  /** The true end lies within so many of its spreads 19 times in 20, as measured on made tears. */
  private static final double WITHIN = 2.9;

  /** An end whose stated error is larger than this, in millimetres, is a doubt. */
  private static final double MOST_ERROR = 2.6;

  /** Two estimates of an end that lie farther apart than this, in millimetres, are a doubt. */
  private static final double MOST_APART = 2.6;

  private final int vanes;
  private final List<TearReading> tears = new ArrayList<>();
  private final List<MmRect> torn = new ArrayList<>();
  private final List<Reason> doubts = new ArrayList<>();

  private TearJudge(int vanes) {
    this.vanes = vanes;
  }

  /** Judges what was found in each zone. */
  static TearReader.Tears judge(List<ZoneLook> zones, ZonesShot shot) {
    List<FoundTear> found =
        zones.stream().flatMap(zone -> zone.tear().stream()).filter(TearJudge::isThere).toList();
    TearJudge judge = new TearJudge(Vanes.of(found));
    for (ZoneLook zone : zones) {
      zone.tear()
          .filter(TearJudge::isThere)
          .ifPresentOrElse(judge::add, () -> judge.askWhetherMissed(zone, shot));
    }
    if (found.isEmpty()) {
      judge.askWhetherAny(zones);
    }
    return new TearReader.Tears(judge.tears, judge.torn, judge.doubts);
  }

  private static boolean isThere(FoundTear found) {
    return found.choice().worth() >= POSSIBLE && found.choice().mostLikely() >= LIKELY;
  }

  private void askWhetherMissed(ZoneLook look, ZonesShot shot) {
    double most = look.tear().map(tear -> tear.choice().mostLikely()).orElse(0.0);
    boolean seen = most > (shot.says(look.zone()) ? TICKED : NOT_TICKED);
    if (seen || look.spot() > SPOT) {
      ask(ReasonCode.TEAR_UNSURE, "Is there a tear in zone %d?", look.zone());
    }
  }

  private void askWhetherAny(List<ZoneLook> zones) {
    doubts.add(
        Reason.at(
            ReasonCode.TEAR_UNSURE,
            "No tear was found on this tear sheet: is there none?",
            zones.get(0).zone().rect().centre()));
  }

  private void add(FoundTear found) {
    double bullets = bullets(found);
    boolean bullet = bullets > 0;
    MmPoint tail = new MmPoint(found.tail().x(), found.tail().y());
    MmPoint point = bullet ? tail : new MmPoint(found.point().x(), found.point().y());
    askWhether(found, tail);
    if (Math.abs(bullets) < TORN_UNSURE || !bullet && found.length() < SHORTEST) {
      ask(ReasonCode.TEAR_UNSURE, "Is this a bullet hole or a short tear in zone %d?", found, tail);
    }
    askEnds(found, bullet, point, tail);
    torn.addAll(found.surroundings());
    double tailError = WITHIN * found.tail().spread();
    tears.add(
        new TearReading(
            found.zone().number(),
            point,
            bullet ? tailError : WITHIN * found.point().spread(),
            tail,
            tailError,
            vanes,
            1 / (1 + Math.exp(-found.choice().margin()))));
  }

  /** Log odds that an arrow left a bullet hole. */
  private static double bullets(FoundTear found) {
    return found.choice().bulletOdds() - TORN_WEIGHT * (found.torn() - TORN);
  }

  private void askWhether(FoundTear found, MmPoint tail) {
    if (found.choice().mostLikely() < SURE) {
      ask(ReasonCode.TEAR_UNSURE, "Is this a tear in zone %d?", found, tail);
    }
    boolean beside = found.unexplained().area() > ANOTHER;
    if (beside || isAnother(found)) {
      ask(
          ReasonCode.TWO_SHOTS,
          "More than one shot seems to have hit zone %d: which tear counts?",
          found,
          beside ? found.unexplained().middle() : tail);
    }
  }

  /** Whether an end that was seen, or cells, speak for another arrow in the zone. */
  private static boolean isAnother(FoundTear found) {
    Unexplained rest = found.unexplained();
    boolean torn = rest.area() > SOME || rest.second() > SOME_CELLS;
    return rest.second() > SECOND || found.other() > (torn ? OTHER_TORN : OTHER);
  }

  private void askEnds(FoundTear found, boolean bullet, MmPoint point, MmPoint tail) {
    if (found.choice().margin() < CLEARLY) {
      ask(
          ReasonCode.TEAR_ENDS_UNSURE,
          "Where did the point go in and where did the tail pass, in zone %d?",
          found,
          tail);
    }
    if (!bullet && isUnclear(found.points())) {
      ask(
          ReasonCode.TEAR_END_UNCLEAR,
          "Is this where the point went in, in zone %d?",
          found,
          point);
    }
    if (isUnclear(found.tails())) {
      ask(ReasonCode.TEAR_END_UNCLEAR, "Is this where the tail passed, in zone %d?", found, tail);
    }
  }

  private static boolean isUnclear(TwoPlaces end) {
    return end.apart() > MOST_APART || WITHIN * end.mean().spread() > MOST_ERROR;
  }

  private void ask(ReasonCode code, String question, FoundTear found, MmPoint place) {
    doubts.add(Reason.at(code, question.formatted(found.zone().number()), place));
  }

  private void ask(ReasonCode code, String question, Zone zone) {
    doubts.add(Reason.at(code, question.formatted(zone.number()), zone.rect().centre()));
  }
}
