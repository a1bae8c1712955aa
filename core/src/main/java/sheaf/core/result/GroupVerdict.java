package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.group.Claim;
import sheaf.core.group.Estimate;
import sheaf.core.group.Flyer;
import sheaf.core.group.Group;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.measure.MinutesOfAngle;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/** A group sheet's or sight-in sheet's result in plain sentences. */
public final class GroupVerdict {

  private GroupVerdict() {}

  /** All there is to say: the group, the shot that stands out, the sight. */
  public static List<String> sentences(GroupResult result) {
    List<String> sentences = new ArrayList<>(List.of(of(result)));
    scatter(result).ifPresent(sentences::add);
    flyer(result).ifPresent(sentences::add);
    sentences.addAll(sight(result));
    return sentences;
  }

  /** How large the group is and where, in the sheet's own units. */
  public static String of(GroupResult result) {
    if (result.shots().isEmpty()) {
      return "No hole was found on this sheet.";
    }
    Group group = result.shots().get();
    UnitSystem units = result.sheet().layout().units();
    String from = result.distance().map(d -> " at " + d).orElse("");
    String middle = middle(group.centre(), units);
    if (group.size() == 1) {
      return "One arrow%s hit %s: a group needs two or more.".formatted(from, middle);
    }
    String size = length(group.extremeSpread(), result);
    return "%d arrows%s: extreme spread %s, middle %s.".formatted(group.size(), from, size, middle);
  }

  private static String middle(MmPoint centre, UnitSystem units) {
    String away = Verdict.away(new MmVector(centre.x(), centre.y()), units);
    return away.isEmpty() ? "on the spot" : away + " of the spot";
  }

  /** The shot that stands out, if one does. */
  public static Optional<String> flyer(GroupResult result) {
    return result.flyer().map(flyer -> flyer(flyer, result.sheet().layout().units()));
  }

  private static String flyer(Flyer flyer, UnitSystem units) {
    return "The arrow %s stands out from the others and is counted all the same; without it the extreme spread is %s."
        .formatted(
            middle(flyer.shot(), units), Verdict.length(flyer.others().extremeSpread(), units));
  }

  /** How to move the sight, sideways and then up or down; empty on a group sheet. */
  public static List<String> sight(GroupResult result) {
    return result
        .sightMove()
        .map(
            move ->
                List.of(
                    axis("sideways", move.right(), move.sideways(), "right", "left", result),
                    axis("up or down", move.up(), move.upright(), "up", "down", result)))
        .orElse(List.of());
  }

  private static String axis(
      String axis, Estimate move, Claim claim, String plus, String minus, GroupResult result) {
    String way = move.value() < 0 ? minus : plus;
    String found = amount(Math.abs(move.value()), result) + " " + way;
    return switch (claim) {
      case SHOWN -> "Move the sight %s: %s.".formatted(way, amount(move, result));
      case NOT_SHOWN ->
          "Leave the sight %s: %s was found%s, too little to matter."
              .formatted(axis, found, margin(move, result));
      case NOT_ENOUGH_ARROWS ->
          "Not enough arrows to move the sight %s: %s was found%s."
              .formatted(axis, found, margin(move, result));
    };
  }

  private static String amount(Estimate move, GroupResult result) {
    return amount(Math.abs(move.value()), result) + margin(move, result);
  }

  /** {@code 2.3 squares = 58.4 mm = 2.30 in = 11.0 MOA}. */
  private static String amount(double mm, GroupResult result) {
    double squares = mm / result.sheet().layout().units().gridSquareMm();
    return tenths(squares) + " squares = " + length(mm, result);
  }

  /** {@code 58.4 mm = 2.30 in = 11.0 MOA}; without the last where the distance is not known. */
  private static String length(double mm, GroupResult result) {
    String minutes =
        result.distance().map(d -> " = " + tenths(MinutesOfAngle.of(mm, d)) + " MOA").orElse("");
    return tenths(mm) + " mm = " + Inches.decimal(mm) + minutes;
  }

  /** How widely the shots scatter, where there are enough to say. */
  public static Optional<String> scatter(GroupResult result) {
    return result
        .spread()
        .map(
            spread ->
                "Mean radius %s. Sigma in each direction %s, with 95 %% confidence %s to %s mm."
                    .formatted(
                        length(result.shots().orElseThrow().meanRadius(), result),
                        length(spread.sigma(), result),
                        tenths(spread.low()),
                        tenths(spread.high())));
  }

  private static String margin(Estimate move, GroupResult result) {
    if (move.margin().isEmpty()) {
      return "";
    }
    double squares = move.margin().getAsDouble() / result.sheet().layout().units().gridSquareMm();
    return ", give or take %s squares".formatted(tenths(squares));
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
