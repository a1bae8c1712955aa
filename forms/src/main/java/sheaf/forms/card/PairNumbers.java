package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.group.Ellipse;
import sheaf.core.group.Group;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmVector;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;

/** A pair sheet's numbers in words. */
final class PairNumbers {

  private PairNumbers() {}

  /**
   * One of the numbers.
   *
   * @param label what it is
   * @param lines its value, the main part first
   */
  record Row(String label, List<String> lines) {}

  static List<Row> of(PairResult pair) {
    List<Row> rows = new ArrayList<>();
    pair.offset()
        .ifPresent(
            offset -> {
              rows.add(shift(offset.shift(), pair));
              rows.add(region(offset.region(), pair));
            });
    pair.equivalence().ifPresent(judged -> rows.add(samePoint(pair)));
    rows.add(group("Field points", pair.field()));
    rows.add(group("Broadheads", pair.broadhead()));
    return rows;
  }

  private static Row shift(MmVector shift, PairResult pair) {
    String angle =
        pair.offsetMinutes()
            .map(minutes -> decimal(minutes) + " MOA at " + pair.distance().orElseThrow())
            .orElse("distance not known");
    return new Row("Broadheads from field points", List.of(length(shift.length()), angle));
  }

  private static Row region(Optional<Ellipse> region, PairResult pair) {
    String label = "True offset, with 95 % confidence";
    if (region.isEmpty()) {
      boolean single = sizeOf(pair.field()) == 1 && sizeOf(pair.broadhead()) == 1;
      return new Row(
          label, List.of(single ? "unknown: one arrow per head" : "unknown: too few arrows"));
    }
    double least = region.get().nearestReach();
    double most = region.get().farthestReach();
    String range =
        least == 0
            ? "at most " + length(most)
            : "%s–%s mm = %s–%s"
                .formatted(
                    decimal(least),
                    decimal(most),
                    Inches.decimal(least).replace(" in", ""),
                    Inches.decimal(most));
    return new Row(label, List.of(range));
  }

  private static Row samePoint(PairResult pair) {
    UnitSystem units = pair.sheet().layout().units();
    String words =
        switch (pair.equivalence().orElseThrow()) {
          case SHOWN -> "shown";
          case NOT_SHOWN -> "not shown";
          case NOT_ENOUGH_ARROWS -> "not enough arrows to say";
        };
    String within = Verdict.length(pair.tolerance().orElseThrow(), units);
    return new Row("The same point within " + within, List.of(words));
  }

  private static Row group(String head, Optional<Group> group) {
    int size = sizeOf(group);
    if (size < 2) {
      return new Row(head, List.of(size == 0 ? "no arrow found" : "1 arrow"));
    }
    String spread = length(group.get().extremeSpread());
    return new Row("%s: extreme spread, %d arrows".formatted(head, size), List.of(spread));
  }

  private static int sizeOf(Optional<Group> group) {
    return group.map(Group::size).orElse(0);
  }

  private static String length(double mm) {
    return "%s mm = %s".formatted(decimal(mm), Inches.decimal(mm));
  }

  private static String decimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
