package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.answer.Question;
import sheaf.core.job.JobId;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.work.SheetsOfJob;
import sheaf.samples.digit.FilledCardSample;
import sheaf.scanner.SheetReader;

/** A filled-in bench card, front and back, from the scanner to the finished card. */
class FilledCardTest {

  private static final List<FilledCardSample> SIDES = FilledCardSample.both();

  @TempDir Path folder;

  private final Map<String, String> meant = new TreeMap<>();

  @Test
  @Tag("slow")
  void goesFromScanToFinishedCardWithOnlyItsDoubtsTyped() throws Exception {
    JobId job = read();
    String typed = answersToAllThatIsAsked(job);
    CommandRun confirmed = CommandRun.typing(typed, folder, "confirm", job.spoken());
    assertThat(confirmed.status()).as(confirmed.out()).isZero();

    JsonNode shown =
        new ObjectMapper().readTree(CommandRun.of(folder, "show", job.spoken(), "--json").out());
    for (JsonNode sheet : shown.get("sheets")) {
      assertThat(sheet.get("status").asText()).isEqualTo("read");
      sheet
          .get("fields")
          .properties()
          .forEach(
              field ->
                  assertThat(field.getValue().path("text").asText(""))
                      .as(field.getKey())
                      .isIn(meant.getOrDefault(field.getKey(), ""), "null"));
    }

    Path card = folder.resolve("card.pdf");
    assertThat(CommandRun.of(folder, "card", job.spoken(), "-o", card.toString()).status())
        .isZero();
    assertThat(words(card))
        .contains("29 8/16 in", "6 9/16 in", "63.0 lb", "271 ft/s", "Notes by hand")
        .doesNotContain(" in unsure", " lb unsure", "doubts");
  }

  private JobId read() throws Exception {
    List<String> words = new ArrayList<>(List.of("read"));
    for (FilledCardSample side : SIDES) {
      words.add(Files.write(folder.resolve(side.name()), side.file()).toString());
      meant.putAll(side.answers());
    }
    CommandRun.of(folder, new SheetReader()::read, words.toArray(String[]::new));
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      return store.jobs(1).get(0);
    }
  }

  /** What somebody types who sees what is written. */
  private String answersToAllThatIsAsked(JobId job) {
    StringBuilder typed = new StringBuilder();
    try (Store store = Store.open(new HomeFolder(folder), Clock.systemUTC())) {
      for (Question question : SheetsOfJob.of(job, store).questions()) {
        if (question.about() instanceof Question.About.OfField field) {
          typed.append(meant.getOrDefault(field.field().key(), "blank"));
        }
        typed.append("\n");
      }
    }
    return typed.toString();
  }

  private static String words(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
