package sheaf.core.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.layout.UnitSystem;

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
    Kind bow,
    Optional<Hand> hand,
    Optional<LoosedBy> loosedBy,
    Optional<Cables> cables,
    UnitSystem units) {

  /** The kinds of bow. */
  public enum Kind {
    /** With cams. */
    COMPOUND,
    /** Without. */
    RECURVE,
    /** On a stock: neither rest nor nocking point to move. */
    CROSSBOW
  }

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
    if (bow == Kind.RECURVE) {
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
    if (bow == Kind.COMPOUND) {
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
    if (loosedBy.isEmpty() || bow == Kind.CROSSBOW) {
      return Optional.empty();
    }
    if (loosedBy.get() == LoosedBy.RELEASE) {
      return Optional.of("the arrow in line with the string over the cams");
    }
    String side = hand.map(h -> " (" + h.arrowSide() + ")").orElse("");
    return Optional.of("the arrow's tip 1/16 to 1/8 in outside that line" + side);
  }
}
