package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.energy.DrawCurve;
import sheaf.core.energy.Pulls;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.PullsLayout;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;
import sheaf.scanner.SheetReader;

/** A force-draw sheet filled in by hand and scanned at 200 dpi. */
class WrittenPullsTest {

  private static final Layout LAYOUT =
      Layouts.current(Variant.PULLS, Paper.LETTER, UnitSystem.INCHES);

  private static final int[] POUNDS = {12, 24, 37, 48, 56, 60, 60, 59, 55, 47, 34, 22};

  // Made first: it loads what the scan is made with, too.
  private final SheetReader reader = new SheetReader();

  private final JobId job = JobId.random(new SplittableRandom(3));
  private final CardWriter writer = new CardWriter(LAYOUT, new SplittableRandom(41));

  private PageReading scanned() {
    for (int i = 0; i < POUNDS.length; i++) {
      writer.write(PullsLayout.key(i + 1), " " + POUNDS[i] + " ", "" + POUNDS[i]);
    }
    writer.write(PullsLayout.FULL_DRAW, "1208", "12 8/16");
    writer.write(PullsLayout.FULL_DRAW_PULL, " 15 ", "15");
    SheetCode code = new SheetCode(job, 2, LAYOUT.id());
    byte[] file = FilledCard.scan(code, writer.hands(), 200, 42);
    List<PageReading> pages = new ArrayList<>();
    reader.read("pulls", file, SheetReader.Proof.SKIP, one -> pages.add(one.reading()));
    return pages.get(0);
  }

  @Test
  void isReadFieldByFieldAndComesToTheEnergyThatWasWritten() {
    PageReading page = scanned();
    writer
        .answers()
        .forEach(
            (key, meant) -> {
              FieldReading reading = page.field(key).orElseThrow();
              assertThat(reading.state()).as(key).isNotEqualTo(State.BLANK);
              if (reading.state() == State.READ) {
                assertThat(reading.text()).as(key).isEqualTo(meant);
              }
            });
    Pulls pulls = Pulls.of(JobSummary.of(job, List.of(confirmed(page))));
    assertThat(pulls.doubts()).isEmpty();
    assertThat(pulls.curve().orElseThrow().joules()).isCloseTo(written(), within(1e-6));
  }

  /** With the doubts answered as a person would, by what was written; what is sure is kept. */
  private PageReading confirmed(PageReading page) {
    List<FieldReading> fields =
        page.fields().stream()
            .map(field -> field.state() == State.CHECK ? answered(field) : field)
            .toList();
    return new PageReading(
        page.source(),
        List.of(),
        page.sheet(),
        page.pixelsPerMm(),
        page.printScale(),
        page.holes(),
        fields);
  }

  private FieldReading answered(FieldReading field) {
    boolean fullDraw = field.key().equals(PullsLayout.FULL_DRAW);
    String meant = writer.answers().get(field.key());
    double value = fullDraw ? 12.5 : Double.parseDouble(meant);
    return new FieldReading(
        field.key(), State.READ, meant, OptionalDouble.of(value), field.unit(), 1);
  }

  private static double written() {
    List<DrawCurve.Pull> pulls = new ArrayList<>(List.of(new DrawCurve.Pull(0, 0)));
    for (int pounds : POUNDS) {
      pulls.add(new DrawCurve.Pull(pulls.size(), pounds));
    }
    pulls.add(new DrawCurve.Pull(12.5, 15));
    return new DrawCurve(pulls).joules();
  }
}
