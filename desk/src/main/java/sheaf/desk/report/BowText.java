package sheaf.desk.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sheaf.core.record.Drifted;
import sheaf.core.record.Inspected;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.Verdict;
import sheaf.desk.store.BowVisits;

/** A bow over its visits: how each left it, and what had moved by the next. */
public final class BowText {

  private BowText() {}

  /**
   * All visits, the earliest first.
   *
   * @param tolerances of measures, by key
   * @param width of a line, in characters
   * @return lines, each with its end
   */
  public static String of(BowVisits bow, Map<String, Drifted.Tolerance> tolerances, int width) {
    StringBuilder text = new StringBuilder(Text.hanging("", title(bow), width));
    List<Visit> visits = bow.visits();
    for (int i = 0; i < visits.size(); i++) {
      if (i > 0) {
        Visit before = visits.get(i - 1);
        List<Drifted> drifted = Drifted.between(before, visits.get(i), tolerances);
        text.append('\n').append(NumbersText.of(drifted, before.job().spoken(), width));
      }
      text.append('\n').append(visit(visits.get(i), width));
    }
    return text.toString();
  }

  private static String title(BowVisits bow) {
    String traits =
        bow.last().bow().traits().stream()
            .map(trait -> trait.answer())
            .filter(Taken::isSure)
            .flatMap(answer -> answer.words().stream())
            .collect(Collectors.joining(", "));
    String words = bow.last().bow().words().orElse(traits.isEmpty() ? "A bow" : traits);
    return words + ", " + Text.count(bow.visits().size(), "visit");
  }

  private static String visit(Visit visit, int width) {
    StringBuilder text = new StringBuilder();
    text.append(visit.day().map(day -> day + "  ").orElse(""));
    text.append("Job ").append(visit.job().spoken());
    visit.customer().ifPresent(customer -> text.append("  for ").append(customer));
    visit.technician().ifPresent(technician -> text.append("  by ").append(technician));
    text.append('\n');
    if (!visit.notSound().isEmpty()) {
      String parts =
          visit.notSound().stream().map(Inspected::label).collect(Collectors.joining(", "));
      text.append(Text.hanging("  ", "DO NOT SHOOT this bow. Not sound: " + parts + ".", width));
    }
    String measured =
        visit.measures().stream()
            .flatMap(
                measure ->
                    measure.left().or(measure::found).filter(Taken::isSure).stream()
                        .flatMap(taken -> taken.words().stream())
                        .map(words -> measure.label() + " " + words))
            .collect(Collectors.joining(", "));
    text.append(
        Text.hanging(
            "  ", measured.isEmpty() ? "No measures." : "Left at: " + measured + ".", width));
    visit.pairAsLeft().ifPresent(pair -> text.append(Text.hanging("  ", Verdict.of(pair), width)));
    return text.toString();
  }
}
