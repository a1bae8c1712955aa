package sheaf.desk.demo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.page.MmVector;
import sheaf.desk.report.Text;

/** The demo's samples beside what they were made with, as a table. */
public final class DemoText {

  private static final String NONE = "-";

  /** What all columns but the name's take, in characters. */
  private static final int FIGURES = 58;

  private DemoText() {}

  /**
   * A line for each sample: how it ended, the measured and the true offset, and how far off.
   *
   * @param tried in order
   * @param width of a line, in characters
   */
  public static String of(List<Tried> tried, int width) {
    int longest = tried.stream().mapToInt(one -> one.name().length()).max().orElse(0);
    int widest = Math.min(longest, width - FIGURES);
    StringBuilder text =
        new StringBuilder("Broadheads minus field points, in mm, x to the right, y down:\n");
    text.append(row(widest, "Sample", "Ended", "Measured x, y", "True x, y", "Off"));
    for (Tried one : tried) {
      Optional<MmVector> measured = one.measured();
      // Where nothing was measured, there is nothing to compare with.
      Optional<MmVector> made = measured.flatMap(any -> one.made());
      text.append(
          row(
              widest,
              Text.elide(one.name(), widest),
              one.reading().state().label()
                  + (one.asExpected() ? "" : ", not " + one.truth().expected()),
              measured.map(DemoText::xy).orElse(NONE),
              made.map(DemoText::xy).orElse(NONE),
              made.map(truth -> off(measured.get(), truth)).orElse(NONE)));
    }
    return text.toString();
  }

  private static String row(
      int widest, String name, String ended, String measured, String made, String off) {
    return String.format(Locale.ROOT, "  %-" + widest + "s  ", name)
        + String.format(Locale.ROOT, "%-15s  %14s  %14s  %5s", ended, measured, made, off)
            .stripTrailing()
        + "\n";
  }

  private static String xy(MmVector offset) {
    return String.format(Locale.ROOT, "%.2f, %.2f", offset.dx(), offset.dy());
  }

  private static String off(MmVector measured, MmVector truth) {
    MmVector miss = new MmVector(measured.dx() - truth.dx(), measured.dy() - truth.dy());
    return String.format(Locale.ROOT, "%.2f", miss.length());
  }
}
