package sheaf.desk.report;

import java.util.Optional;
import sheaf.core.group.Group;
import sheaf.core.reading.Head;
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
    return Text.sheet(line.sheet(), Optional.empty(), what, line.state(), width)
        + Text.hanging(INDENT, LineVerdict.of(line), width)
        + LineVerdict.practice(line.shots())
            .map(practice -> Text.hanging(INDENT, practice, width))
            .orElse("");
  }

  static String of(GroupResult group, int width) {
    String what = Text.count(group.shots().map(Group::size).orElse(0), arrows(group.head()));
    StringBuilder text =
        new StringBuilder(Text.sheet(group.sheet(), group.distance(), what, group.state(), width));
    GroupVerdict.sentences(group).forEach(line -> text.append(Text.hanging(INDENT, line, width)));
    return text.toString();
  }

  private static String arrows(Head head) {
    return switch (head) {
      case FIELD -> "field point";
      case BROADHEAD -> "broadhead";
      case UNKNOWN -> "arrow";
    };
  }
}
