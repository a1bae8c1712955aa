package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReasonCode;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;

/** What people say of a job: they confirm, correct and type in. */
class AnswerCommandsTest {

  private static final String JOB = Pages.JOB.spoken();
  private static final PageReading CARD = Pages.unsureCard(Pages.JOB, 1);

  @TempDir Path folder;

  @BeforeEach
  void readACard() {
    file("card.jpg", 1, CARD);
  }

  private void file(String name, int content, PageReading page) {
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      store.file(name, new byte[] {(byte) content}, List.of(page), "0.1.0");
    }
  }

  private CommandRun confirm(String typed) {
    return CommandRun.typing(typed, folder, "confirm", JOB, "--by", "T.S.");
  }

  private CommandRun set(String... words) {
    List<String> all = new java.util.ArrayList<>(List.of("set", JOB));
    all.addAll(List.of(words));
    return CommandRun.of(folder, all.toArray(String[]::new));
  }

  private String show(String... words) {
    List<String> all = new java.util.ArrayList<>(List.of("show", JOB));
    all.addAll(List.of(words));
    return CommandRun.of(folder, all.toArray(String[]::new)).out();
  }

  @Nested
  class Confirm {

    @Test
    void asksWithTheBestGuessAndAPicture() {
      CommandRun run = confirm("");
      assertThat(run.status()).isEqualTo(3);
      assertThat(run.out())
          .contains(
              "Sheet 1, 2 questions left", "Is it 29 6/16", "[29 6/16 in] >", "sheet-1-01.png");
      assertThat(folder.resolve("doubts").resolve(JOB).resolve("sheet-1-01.png")).exists();
    }

    @Test
    void takesAndCorrects() {
      CommandRun run = confirm("\n6 1/2 in\n");
      assertThat(run.status()).isZero();
      assertThat(run.out()).contains("Nothing is left to ask about sheet 1", "2 answers kept.");
      assertThat(show()).contains("29 6/16 in  (by hand)", "6 1/2 in  (by hand)");
    }

    @Test
    void asksAgainForWhatIsNotUnderstood() {
      CommandRun run = confirm("294 in\n29 in\nq\n");
      assertThat(run.out().replace('\n', ' ')).contains("It is usually 15 to 36 in");
      assertThat(show()).contains("29 in  (by hand)");
    }

    @Test
    void skipsAndEndsWithoutLosingAnything() {
      CommandRun run = confirm("s\n6 1/2\n");
      assertThat(run.status()).isEqualTo(3);
      assertThat(run.out()).contains("1 answer kept. 1 question left: sheaf confirm " + JOB);
      assertThat(confirm("\n").status()).isZero();
    }

    @Test
    void hasNothingToAskOfASureJob() {
      confirm("\n\n");
      CommandRun again = confirm("");
      assertThat(again.status()).isZero();
      assertThat(again.out()).contains("Nothing is left to ask.");
    }

    @Test
    void takesAHoleAwayOrNamesItsHead() {
      PageReading pair = Pages.pair(Pages.JOB, 2, 30, 12);
      PageReading doubted =
          Pages.doubted(
              pair, ReasonCode.HEAD_UNSURE, "Which head made this?", pair.holes().get(3).axis());
      file("pair.jpg", 2, doubted);
      assertThat(confirm("s\ns\nnone\n").out()).contains("field / broadhead / none");
      assertThat(show()).contains("3 field points, 2 broadheads");
    }
  }

  @Nested
  class Set {

    @Test
    void typesValuesInWithTheirUnits() {
      CommandRun run = set("draw_length_found=29 3/8", "in", "axle_to_axle_left=813 mm");
      assertThat(run.status()).isZero();
      assertThat(run.out())
          .contains("Draw length (ATA) as found: 29 3/8 in (was 29 6/16 in, unsure)")
          .contains("Axle to axle as left: 813 mm (was blank)");
      assertThat(show("--json")).contains("\"813\"", "\"typed\"");
    }

    @Test
    void takesFieldsOfCardsThatWereNotRead() {
      assertThat(set("arrow_length=28 1/4 in").status()).isZero();
      assertThat(show("--json")).contains("28 1/4");
    }

    @Test
    void takesAllOrNothing() {
      CommandRun run = set("axle_to_axle_left=32 in", "peak_weight_left=heavy");
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err()).contains("peak_weight_left is a number such as 59.9 lb, not 'heavy'.");
      assertThat(show("--history")).doesNotContain("axle_to_axle_left");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "drawlength=29 in | There is no field 'drawlength'",
          "29 3/8 in | must be FIELD=VALUE",
          "axle_to_axle_left=813 in | is usually 6 to 60 in, not '813 in': mistyped? With --anyway",
        })
    void saysWhatIsWrong(String typed, String complaint) {
      CommandRun run = set(typed);
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err().replace('\n', ' ')).contains(complaint);
    }

    @Test
    void namesTheFieldsWithWhatTheyHold() {
      assertThat(set().out()).contains("draw_length_found", "29 6/16 in, unsure");
      assertThat(set().out()).doesNotContain("trigger_pull");
    }

    @Test
    void needsAKnownJob() {
      CommandRun run = CommandRun.of(folder, "set", Pages.OTHER_JOB.spoken(), "speed=280 ft/s");
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err()).contains("is not known");
    }
  }

  @Test
  void historyTellsEveryValueAndWhoSaidIt() {
    confirm("29 3/8 in\nq\n");
    set("draw_length_found=29 1/4 in", "--by", "R.M.", "--why", "measured again");
    String history = show("--history").replaceAll("\\s+", " ");
    assertThat(history)
        .contains("29 6/16 in, read from card.jpg, sheet 1")
        .contains("29 3/8 in, looked at by T.S.")
        .contains("29 1/4 in, typed in by R.M.: measured again");
    assertThat(show("--history", "--json")).startsWith("{\"job\":").contains("\"measured again\"");
  }

  @Test
  void aSheetThatSaysSomethingElseLaterIsAskedAbout() {
    confirm("\n\n");
    file("again.jpg", 2, Pages.sureCard(Pages.JOB, 1, "28 6/16", 28.375));
    CommandRun run = confirm("");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("T.S. said 29 6/16 in; this sheet says 28 6/16 in. Which holds?");
  }
}
