package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;

/** What is said of a bow between two sheets: the plan, and the numbers of {@code show}. */
class PlanCommandTest {

  private static final String JOB = Pages.JOB.spoken();

  @TempDir Path folder;

  @BeforeEach
  void readTwoSheets() {
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      store.file("one.jpg", new byte[] {1}, List.of(Pages.pair(Pages.JOB, 2, -60, 0)), "0");
      PageReading second = restMovedRight(Pages.pair(Pages.JOB, 3, -44, 0), 2);
      store.file("two.jpg", new byte[] {2}, List.of(second), "0");
    }
  }

  /** A sheet before which the rest was moved so many 64ths of an inch to the right. */
  private static PageReading restMovedRight(PageReading page, int steps) {
    List<FieldReading> fields = new ArrayList<>(page.fields());
    fields.removeIf(field -> field.key().startsWith("changed"));
    fields.add(said("changed", "rest", OptionalDouble.empty()));
    fields.add(said("changed_way", "right", OptionalDouble.empty()));
    fields.add(said("changed_by", String.valueOf(steps), OptionalDouble.of(steps)));
    fields.add(said("changed_unit", "1/64 in", OptionalDouble.empty()));
    return new PageReading(
        page.source(),
        page.reasons(),
        page.sheet(),
        page.pixelsPerMm(),
        page.printScale(),
        page.holes(),
        fields);
  }

  private static FieldReading said(String key, String text, OptionalDouble value) {
    return new FieldReading(key, State.READ, text, value, Optional.empty(), 1);
  }

  @Test
  void planTellsTheMoveAndWhy() {
    CommandRun run = CommandRun.of(folder, "plan", JOB);
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("Job " + JOB + "\n  Next: move the rest ")
        .contains("in right, then shoot a new sheet.")
        .contains("By how this bow has answered so far")
        .contains("This bow: rest, 1/64 in right, moves broadheads 0.29 in right");
    assertThat(run.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void planForProgramsIsOneObject() throws Exception {
    CommandRun run = CommandRun.of(folder, "plan", JOB, "--json");
    assertThat(run.lines()).hasSize(1);
    JsonNode plan = new ObjectMapper().readTree(run.out());
    assertThat(plan.get("kind").textValue()).isEqualTo("computed_move");
    assertThat(plan.get("move").get("part").textValue()).isEqualTo("rest");
    assertThat(plan.get("move").get("steps").doubleValue()).isBetween(4.0, 6.0);
    assertThat(plan.get("now").get("x").doubleValue()).isBetween(-46.0, -42.0);
    assertThat(plan.get("learnt")).hasSize(1);
  }

  @Test
  void planOfAnUnknownJobIsAMisuse() {
    CommandRun run = CommandRun.of(folder, "plan", Pages.OTHER_JOB.spoken());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("is not known");
  }

  @Test
  void showDrawsTheSheets() {
    assertThat(CommandRun.of(folder, "show", JOB).out())
        .contains("As shot\n", "o field points, F their middle, x broadheads, B theirs")
        .contains("Broadheads: 3, extreme spread");
  }

  @Test
  void showAsATableHasALineForEachValue() {
    CommandRun run = CommandRun.of(folder, "show", JOB, "--csv");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("job,sheet,what,value,unit\r\n")
        .contains(JOB + ",2,distance,20.00,yd\r\n")
        .contains(JOB + ",2,field_arrows,3,\r\n");
  }

  @Test
  void showTellsWhatMovedSinceAnotherJob() {
    CommandRun run = CommandRun.of(folder, "show", JOB, "--since", JOB);
    assertThat(run.out()).contains("Since job " + JOB, "Nothing that was measured both times");
  }

  @Test
  void showTwoWaysAtOnceIsAMisuse() {
    assertThat(CommandRun.of(folder, "show", JOB, "--csv", "--json").status()).isEqualTo(2);
  }

  @Test
  void whatCannotBeComputedWithIsAMisuse() {
    assertThat(CommandRun.of(folder, "show", JOB, "--pulls", "0,x").err())
        .contains("no list of pounds");
    assertThat(CommandRun.of(folder, "show", JOB, "--eye", "far").err()).contains("no length");
    assertThat(CommandRun.of(folder, "show", JOB, "--air", "99,1000,50").err()).contains("no air");
    assertThat(CommandRun.of(folder, "show", JOB, "--sight-set", "0").err())
        .contains("no distance");
  }
}
