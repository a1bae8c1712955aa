package sheaf.desk.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.group.Group;
import sheaf.core.group.Spread;
import sheaf.core.job.SheetCode;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Inches;
import sheaf.core.measure.MinutesOfAngle;
import sheaf.core.reading.Head;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.LineResult;
import sheaf.core.result.LineVerdict;

/** What line sheets, group sheets and sight-in sheets came to, a paragraph each. */
final class TargetText {

  private static final String INDENT = "    ";

  private TargetText() {}

  static String of(LineResult line, int width) {
    int shots = line.bands().stream().mapToInt(band -> band.shots().size()).sum();
    long bands = line.bands().stream().filter(band -> !band.shots().isEmpty()).count();
    String what = Text.count(shots, "arrow") + " at " + Text.count((int) bands, "band");
    return head(line.sheet(), Optional.empty(), what, line.state(), width)
        + Text.hanging(INDENT, LineVerdict.of(line), width)
        + LineVerdict.practice(line.shots())
            .map(practice -> Text.hanging(INDENT, practice, width))
            .orElse("");
  }

  static String of(GroupResult group, int width) {
    String what = Text.count(group.shots().map(Group::size).orElse(0), arrows(group.head()));
    StringBuilder text =
        new StringBuilder(head(group.sheet(), group.distance(), what, group.state(), width));
    GroupVerdict.sentences(group).forEach(line -> text.append(Text.hanging(INDENT, line, width)));
    group.spread().ifPresent(spread -> text.append(size(group, spread, width)));
    return text.toString();
  }

  private static String arrows(Head head) {
    return switch (head) {
      case FIELD -> "field point";
      case BROADHEAD -> "broadhead";
      case UNKNOWN -> "arrow";
    };
  }

  private static String head(
      SheetCode sheet, Optional<Distance> distance, String what, ReadingState state, int width) {
    String head =
        "Sheet %d, %s%s: %s%s"
            .formatted(
                sheet.number(),
                sheet.layout().kind().label(),
                distance.map(from -> " at " + from).orElse(""),
                what,
                state == ReadingState.CHECK ? " (with doubts)" : "");
    return Text.hanging("  ", head, width);
  }

  private static String size(GroupResult group, Spread spread, int width) {
    Group shots = group.shots().orElseThrow();
    List<String> lines =
        List.of(
            "Extreme spread " + length(shots.extremeSpread(), group.distance()),
            "Mean radius " + length(shots.meanRadius(), group.distance()),
            "Sigma %s; with 95 %% confidence %s to %s mm"
                .formatted(
                    length(spread.sigma(), group.distance()),
                    Text.tenths(spread.low()),
                    Text.tenths(spread.high())));
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(Text.hanging(INDENT, line, width)));
    return text.toString();
  }

  private static String length(double mm, Optional<Distance> from) {
    String minutes =
        from.map(d -> String.format(Locale.ROOT, " = %.1f MOA", MinutesOfAngle.of(mm, d)))
            .orElse("");
    return Text.tenths(mm) + " mm = " + Inches.decimal(mm) + minutes;
  }
}
