package sheaf.core.answer;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;

/** The holes and tears of a page with what people said of them, one answer after the other. */
final class Targets {

  /**
   * What is meant lies this near to where it was shown, in millimetres: less than half a shaft's
   * diameter, so that of two holes side by side the right one is taken.
   */
  static final double NEAR = 2.5;

  /** A person places an axis on a picture about this well, in millimetres, 19 times in 20. */
  private static final double BY_EYE = 1;

  /** A shaft's diameter in millimetres where no hole of the sheet tells it. */
  private static final double USUAL_SHAFT = 6.5;

  private static final Set<ReasonCode> ABOUT_HOLES =
      EnumSet.of(
          ReasonCode.HOLE_UNSURE,
          ReasonCode.HEAD_UNSURE,
          ReasonCode.HEAD_AGAINST_DOT,
          ReasonCode.CENTRE_UNSURE,
          ReasonCode.AIM_UNSURE);

  private static final Set<ReasonCode> ABOUT_TEARS =
      EnumSet.of(
          ReasonCode.TEAR_UNSURE,
          ReasonCode.TEAR_ENDS_UNSURE,
          ReasonCode.TEAR_END_UNCLEAR,
          ReasonCode.TEAR_ON_TRIAL);

  private final PageReading page;
  private final Optional<Layout> layout;
  private final List<Hole> holes;
  private final List<TearReading> tears;
  private final List<MmPoint> toldHoles = new ArrayList<>();
  private final List<Integer> toldZones = new ArrayList<>();

  Targets(PageReading page) {
    this.page = page;
    this.layout = page.sheet().flatMap(code -> Layouts.find(code.layout()));
    this.holes = new ArrayList<>(page.holes());
    this.tears = new ArrayList<>(page.tears());
  }

  List<Hole> holes() {
    return holes;
  }

  List<TearReading> tears() {
    return tears;
  }

  void hear(Said said) {
    if (said instanceof Said.HoleAt hole) {
      toldHoles.add(hole.near());
      int index = index(hole.near()).orElse(index(hole.at()).orElse(holes.size()));
      Hole told =
          told(hole, index < holes.size() ? Optional.of(holes.get(index)) : Optional.empty());
      if (index < holes.size()) {
        holes.set(index, told);
      } else {
        holes.add(told);
      }
    } else if (said instanceof Said.NoHole none) {
      toldHoles.add(none.near());
      index(none.near()).ifPresent(index -> holes.remove((int) index));
    } else if (said instanceof Said.TearAt tear) {
      toldZones.add(tear.zone());
      TearReading found = tear(tear);
      tears.removeIf(one -> one.zone() == tear.zone());
      tears.add(found);
      tears.sort((one, other) -> Integer.compare(one.zone(), other.zone()));
    } else if (said instanceof Said.NoTear none) {
      toldZones.add(none.zone());
      tears.removeIf(one -> one.zone() == none.zone());
    }
  }

  static boolean isAboutHole(Reason reason) {
    return ABOUT_HOLES.contains(reason.code());
  }

  static boolean isAboutTear(Reason reason) {
    return ABOUT_TEARS.contains(reason.code());
  }

  /** Whether a doubt is about a hole or a zone of which somebody spoke. */
  boolean settles(Reason reason) {
    if (reason.place().isEmpty()) {
      return false;
    }
    MmPoint place = reason.place().get();
    return ABOUT_HOLES.contains(reason.code())
            && toldHoles.stream().anyMatch(told -> told.minus(place).length() <= NEAR)
        || ABOUT_TEARS.contains(reason.code())
            && layout
                .flatMap(sheet -> sheet.zoneAt(place))
                .filter(zone -> toldZones.contains(zone.number()))
                .isPresent();
  }

  private Optional<Integer> index(MmPoint near) {
    int best = -1;
    double nearest = NEAR;
    for (int i = 0; i < holes.size(); i++) {
      double off = holes.get(i).axis().minus(near).length();
      if (off <= nearest) {
        nearest = off;
        best = i;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(best);
  }

  private Hole told(Said.HoleAt told, Optional<Hole> found) {
    boolean moved = found.filter(hole -> hole.axis().equals(told.at())).isEmpty();
    boolean broadhead = told.head() == Head.BROADHEAD;
    return new Hole(
        told.at(),
        moved ? BY_EYE : found.get().axisError(),
        found.map(Hole::diameter).orElse(shaft()),
        told.head(),
        broadhead ? found.map(Hole::blades).orElse(0) : 0,
        broadhead ? found.map(Hole::cut).orElse(0.0) : 0,
        told.aim(),
        zone(told.at()),
        1);
  }

  private double shaft() {
    return page.holes().stream().mapToDouble(Hole::diameter).findFirst().orElse(USUAL_SHAFT);
  }

  private OptionalInt zone(MmPoint at) {
    return layout
        .flatMap(sheet -> sheet.zoneAt(at))
        .map(zone -> OptionalInt.of(zone.number()))
        .orElse(OptionalInt.empty());
  }

  private TearReading tear(Said.TearAt told) {
    Optional<TearReading> found =
        tears.stream().filter(one -> one.zone() == told.zone()).findFirst();
    return new TearReading(
        told.zone(),
        told.point(),
        BY_EYE,
        told.tail(),
        BY_EYE,
        found.map(TearReading::vanes).orElse(TearReading.UNKNOWN_VANES),
        1);
  }
}
