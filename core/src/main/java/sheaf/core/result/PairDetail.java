package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.group.Comparison;
import sheaf.core.group.EnclosingCircle;
import sheaf.core.group.Equivalence;
import sheaf.core.group.Flyer;
import sheaf.core.group.Group;
import sheaf.core.group.Offset;
import sheaf.core.layout.UnitSystem;

/** What else a pair sheet tells to those who want to know how sure it is, in plain sentences. */
public final class PairDetail {

  private PairDetail() {}

  /** The size of both groups, who stands out, what a rounder model says, and how to settle it. */
  public static List<String> sentences(PairResult result) {
    List<String> sentences = new ArrayList<>();
    result.field().ifPresent(group -> sentences.addAll(group("Field points", group, result)));
    result.broadhead().ifPresent(group -> sentences.addAll(group("Broadheads", group, result)));
    if (result.field().isPresent() && result.broadhead().isPresent()) {
      Comparison both = Comparison.of(result.field().get(), result.broadhead().get());
      round(both, result).ifPresent(sentences::add);
      more(both, result).ifPresent(sentences::add);
    }
    return sentences;
  }

  private static List<String> group(String name, Group group, PairResult result) {
    UnitSystem units = result.sheet().layout().units();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "%s: %d, extreme spread %s, a circle of %s holds them all."
            .formatted(
                name,
                group.size(),
                Verdict.length(group.extremeSpread(), units),
                Verdict.length(2 * EnclosingCircle.of(group).radius(), units)));
    Flyer.of(group).map(flyer -> flyer(name, flyer, result)).ifPresent(sentences::add);
    return sentences;
  }

  /** Both results are told: with the shot, as everywhere, and without it. */
  private static String flyer(String name, Flyer flyer, PairResult result) {
    UnitSystem units = result.sheet().layout().units();
    boolean fieldPoints = name.startsWith("Field");
    Optional<Offset> without =
        fieldPoints
            ? result.broadhead().map(b -> Offset.between(flyer.others(), b))
            : result.field().map(f -> Offset.between(f, flyer.others()));
    return "One of them stands out and is counted all the same; without it, broadheads hit "
        + without.map(o -> Verdict.direction(o.shift(), units)).orElse("alone")
        + ".";
  }

  /** With few arrows, what the round model says; it can differ, so its assumption is named. */
  private static Optional<String> round(Comparison both, PairResult result) {
    Offset offset = both.roundOffset();
    if (!both.isTiny() || offset.region().isEmpty() || result.tolerance().isEmpty()) {
      return Optional.empty();
    }
    UnitSystem units = result.sheet().layout().units();
    double tolerance = result.tolerance().get();
    String said =
        switch (Equivalence.judge(offset, tolerance)) {
          case SHOWN -> "that would show";
          case NOT_SHOWN -> "that would not show";
          case NOT_ENOUGH_ARROWS -> "these would still be too few arrows to show";
        };
    return Optional.of(
        "If arrows scatter alike in all directions, the offset is known to within %s; %s the same point within %s."
            .formatted(
                Verdict.length(offset.region().get().semiMajor(), units),
                said,
                Verdict.length(tolerance, units)));
  }

  private static Optional<String> more(Comparison both, PairResult result) {
    if (result.tolerance().isEmpty()
        || result.equivalence().filter(e -> e == Equivalence.NOT_ENOUGH_ARROWS).isEmpty()) {
      return Optional.empty();
    }
    OptionalInt more = both.moreOfEach(result.tolerance().get());
    return Optional.of(
        more.isEmpty()
            ? "More than 30 more arrows of each head would be needed to settle it."
            : String.format(
                Locale.ROOT,
                "About %d more arrow%s of each head at the same setting would settle it.",
                Math.max(more.getAsInt(), 1),
                more.getAsInt() > 1 ? "s" : ""));
  }
}
