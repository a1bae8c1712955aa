package sheaf.core.tune;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.layout.BowType;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Taken;

/**
 * What kind of bow it is and how it is shot, as far as that decides what there is to move.
 *
 * @param bow compound, recurve or crossbow
 * @param hand that draws the string; empty when it is not known
 * @param loosedBy fingers or release; empty when it is not known
 * @param cables how the cams are held upright and in time; empty when it is not known
 * @param units that moves are told in
 */
public record BowSetup(
    BowType bow,
    Optional<Hand> hand,
    Optional<LoosedBy> loosedBy,
    Optional<Cables> cables,
    UnitSystem units) {

  /** Which hand draws. */
  public enum Hand {
    /** The arrow lies on the left of the riser, as the archer sees it. */
    RIGHT("left"),
    /** The arrow lies on the right of the riser. */
    LEFT("right");

    private final String arrowSide;

    Hand(String arrowSide) {
      this.arrowSide = arrowSide;
    }

    /** On which side of the riser the arrow lies, as the archer sees it. */
    String arrowSide() {
      return arrowSide;
    }
  }

  /** What lets the string go. */
  public enum LoosedBy {
    /** A release aid: the arrow leaves nearly straight. */
    RELEASE,
    /** Fingers: the arrow bends sideways on its way out. */
    FINGERS
  }

  /** How a compound's cams are held. */
  public enum Cables {
    /** A split yoke at one or both ends, whose legs can be twisted. */
    SPLIT_YOKE,
    /** No yoke: cams are moved by shims, spacers or hats on their axles. */
    SHIMS,
    /** One cam and an idler wheel. */
    SINGLE_CAM,
    /** Two unlike cams, with a yoke at the upper one. */
    HYBRID;

    /** The name in commands: {@code split-yoke}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * What a record says of the kind of bow; its cables are on no card.
   *
   * @param cables as a person says, where one does
   */
  public static BowSetup of(BowRecord record, Optional<Cables> cables) {
    Optional<String> hand = record.trait("hand").map(Taken::text);
    Optional<String> loosed = record.trait("loosed_by").map(Taken::text);
    List<LayoutId> sheets =
        record.last().sheets().stream().map(sheet -> sheet.code().layout()).toList();
    return new BowSetup(
        sheets.stream()
            .flatMap(id -> bow(id.variant()).stream())
            .findFirst()
            .orElse(BowType.COMPOUND),
        hand.flatMap(said -> named(Hand.values(), said)),
        loosed.flatMap(said -> named(LoosedBy.values(), said)),
        cables,
        sheets.stream().map(LayoutId::units).findFirst().orElse(UnitSystem.INCHES));
  }

  /** Whether what bows of one set-up taught may be expected of the other. */
  public boolean isLike(BowSetup other) {
    return bow == other.bow && hand.equals(other.hand) && loosedBy.equals(other.loosedBy);
  }

  private static Optional<BowType> bow(Variant card) {
    return Arrays.stream(BowType.values())
        .filter(
            type ->
                List.of(type.front(), type.back(), type.returnFront(), type.returnBack())
                    .contains(card))
        .findFirst();
  }

  private static <E extends Enum<E>> Optional<E> named(E[] values, String word) {
    return Arrays.stream(values)
        .filter(value -> value.name().toLowerCase(Locale.ROOT).equals(word))
        .findFirst();
  }

  /** The lever that is moved first along an axis; empty when there is none. */
  Optional<Lever> first(Axis axis) {
    Step step = Step.of(units);
    return switch (bow) {
      case COMPOUND -> Optional.of(new Lever(Part.REST, axis, step));
      case RECURVE ->
          Optional.of(new Lever(axis == Axis.SIDEWAYS ? Part.REST : Part.NOCKING, axis, step));
      case CROSSBOW -> Optional.empty();
    };
  }

  /** What else moves impact along an axis, for when the first lever does not do it. */
  List<String> others(Axis axis) {
    return axis == Axis.SIDEWAYS ? othersSideways() : othersUpright();
  }

  private List<String> othersSideways() {
    List<String> others = new ArrayList<>();
    if (bow == BowType.RECURVE) {
      others.add("plunger stiffness");
    } else {
      cables.map(BowSetup::camLean).ifPresent(others::add);
    }
    if (loosedBy.filter(by -> by == LoosedBy.FINGERS).isPresent()) {
      others.add("arrow stiffness (point mass, length, spine)");
    }
    others.add("grip and torque, vane clearance");
    return others;
  }

  private List<String> othersUpright() {
    List<String> others = new ArrayList<>();
    if (bow == BowType.COMPOUND) {
      others.add("nocking point");
      cables.flatMap(BowSetup::timing).ifPresent(others::add);
    }
    others.add("clearance over the rest");
    return others;
  }

  private static String camLean(Cables cables) {
    return switch (cables) {
      case SPLIT_YOKE ->
          "the yoke, half a turn into one leg and out of the other, which keeps the timing (press"
              + " needed)";
      case SHIMS -> "cam shims or spacers from one side to the other (press needed)";
      case SINGLE_CAM ->
          "the yoke at the idler wheel where there is one, half a turn out of one leg into the"
              + " other (press needed)";
      case HYBRID ->
          "the yoke at the upper cam, half a turn out of one leg into the other (press needed)";
    };
  }

  private static Optional<String> timing(Cables cables) {
    return switch (cables) {
      case SPLIT_YOKE, SHIMS -> Optional.of("cam timing, both stops together (press needed)");
      case HYBRID -> Optional.of("the control cable, half a turn at a time (press needed)");
      case SINGLE_CAM -> Optional.empty();
    };
  }

  /** Where common practice starts the arrow from, seen from above. */
  Optional<String> centreLine() {
    if (loosedBy.isEmpty() || bow == BowType.CROSSBOW) {
      return Optional.empty();
    }
    if (loosedBy.get() == LoosedBy.RELEASE) {
      return Optional.of("the arrow in line with the string over the cams");
    }
    String side = hand.map(h -> " (" + h.arrowSide() + ")").orElse("");
    return Optional.of("the arrow's tip 1/16 to 1/8 in outside that line" + side);
  }
}
