package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.core.record.How;
import sheaf.core.record.Inspected;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.Verdict;
import sheaf.forms.draw.QrSymbol;

/**
 * The numbers that restore the bow as plain text, which any phone shows without a network. Nothing
 * personal, and no letter that a code would have to spell in a longer way.
 */
final class KeyNumbers {

  private static final String MORE = "More on the card.";

  private KeyNumbers() {}

  /** As many lines as a code of a size holds; the first ones matter most. */
  static String fitting(BowRecord record, MmRect square) {
    List<String> lines = lines(record.last());
    for (int count = lines.size(); count > 1; count--) {
      String text = String.join("\n", lines.subList(0, count));
      String whole = count < lines.size() ? text + "\n" + MORE : text;
      if (QrSymbol.fitsCard(square, whole)) {
        return whole;
      }
    }
    return lines.get(0);
  }

  private static List<String> lines(Visit visit) {
    List<String> lines = new ArrayList<>();
    if (visit.notSound().isEmpty()) {
      lines.add("Job " + visit.job().spoken() + " as left");
    } else {
      lines.add("Job " + visit.job().spoken() + " DO NOT SHOOT");
      lines.add(
          "Not sound: "
              + visit.notSound().stream().map(Inspected::key).collect(Collectors.joining(", ")));
    }
    visit.day().ifPresent(day -> lines.add(day.toString()));
    int before = lines.size();
    visit.measures().forEach(measure -> line(measure).ifPresent(lines::add));
    if (lines.size() == before) {
      lines.add("No measure has been read in yet.");
    }
    visit.pairAsLeft().ifPresent(pair -> lines.add(Verdict.of(pair)));
    return lines.stream().map(KeyNumbers::plain).toList();
  }

  private static Optional<String> line(Measure measure) {
    return measure
        .left()
        .filter(left -> left.how() != How.WRITTEN)
        .map(left -> measure.label() + " " + value(left));
  }

  private static String value(Taken taken) {
    return taken.words().orElseThrow() + (taken.how() == How.DOUBTFUL ? " ?" : "");
  }

  private static String plain(String text) {
    return text.replaceAll("[^\\x20-\\x7e]", "?");
  }
}
