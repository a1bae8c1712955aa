package sheaf.core.tune;

import java.util.Optional;
import sheaf.core.record.Change;
import sheaf.core.record.Taken;

/**
 * A lever moved by so much.
 *
 * @param lever what, and along which way
 * @param steps how many of its steps; right and up are positive, and never zero
 */
public record Move(Lever lever, double steps) {

  /** Throws when nothing is moved. */
  public Move {
    if (!(Math.abs(steps) > 0) || !Double.isFinite(steps)) {
      throw new IllegalArgumentException("a move must be finite and not zero: " + steps);
    }
  }

  /**
   * The move that a change written on a sheet was.
   *
   * @return empty when the change does not surely say what, which way and how much
   */
  static Optional<Move> of(Change change) {
    Optional<Part> part = sure(change.what()).flatMap(Part::of).filter(p -> p != Part.OTHER);
    Optional<String> way = change.way().flatMap(Move::sure);
    Optional<Taken> amount =
        change.amount().filter(by -> sure(by).isPresent() && by.value().orElse(0) > 0);
    Optional<Step> step = amount.flatMap(by -> Step.endingIn(by.text()));
    if (part.isEmpty() || way.isEmpty() || step.isEmpty()) {
      return Optional.empty();
    }
    double steps = amount.get().value().orElseThrow();
    return switch (way.get()) {
      case "right" -> Optional.of(move(part.get(), Axis.SIDEWAYS, step.get(), steps));
      case "left" -> Optional.of(move(part.get(), Axis.SIDEWAYS, step.get(), -steps));
      case "up" -> Optional.of(move(part.get(), Axis.UPRIGHT, step.get(), steps));
      case "down" -> Optional.of(move(part.get(), Axis.UPRIGHT, step.get(), -steps));
      default -> Optional.empty();
    };
  }

  private static Move move(Part part, Axis axis, Step step, double steps) {
    return new Move(new Lever(part, axis, step), steps);
  }

  private static Optional<String> sure(Taken taken) {
    return taken.isSure() ? Optional.of(taken.text()) : Optional.empty();
  }

  /** As it is said to somebody who makes it: {@code the rest 1/32 in right}. */
  public String words() {
    return lever.part().spoken() + " " + lever.step().words(steps) + " " + lever.axis().word(steps);
  }
}
