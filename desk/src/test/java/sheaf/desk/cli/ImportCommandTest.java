package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.desk.Pages;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.json.RecordJson;
import sheaf.desk.store.Store;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.CarriedRecord;
import sheaf.forms.FinishedCard;
import sheaf.forms.Shop;

/** A record restored from a card alone. */
class ImportCommandTest {

  private static final String JOB = Pages.JOB.spoken();

  @TempDir Path folder;
  private Path shop;
  private Path other;
  private Path card;

  @BeforeEach
  void printACard() {
    shop = folder.resolve("shop");
    other = folder.resolve("other");
    card = folder.resolve("card.pdf");
    file(shop, Pages.pair(Pages.JOB, 2, 30, 12));
    assertThat(print(shop, card, "card").status()).isZero();
  }

  @ParameterizedTest
  @EnumSource
  void everyFormOfACardRestoresTheRecord(CardForm form) throws IOException {
    Path printed = folder.resolve("printed.pdf");
    print(shop, printed, form.label());
    CommandRun run = importInto(other, printed);

    assertThat(run.status()).isZero();
    assertThat(run.err().replace('\n', ' ')).contains("Record of job " + JOB + " restored from");
    assertThat(record(other)).isEqualTo(record(shop));
  }

  @Test
  void aRestoredRecordIsShownAndPrintedAgainAsTheSameCard() throws IOException {
    importInto(other, card);
    Path again = folder.resolve("again.pdf");
    CommandRun printed = print(other, again, "card");

    assertThat(printed.status()).isZero();
    assertThat(printed.err().replace('\n', ' ')).contains("Made from the record of card.pdf.");
    assertThat(carried(again)).isEqualTo(carried(card));
    assertThat(CommandRun.of(other, "show", JOB).out())
        .contains("From the card card.pdf, imported on 2026-09-14.")
        .contains("Broadheads hit 1 3/16 in right and 1/2 in low");
  }

  @Test
  void whatIsKnownExactlySoIsNotKeptTwice() {
    importInto(other, card);
    CommandRun again = importInto(other, card);

    assertThat(again.status()).isZero();
    assertThat(again.err()).contains("exactly as the card says: nothing was changed.");
  }

  @Test
  void whatIsKnownDifferentlyIsNotOverwrittenUnlessAsked() throws IOException {
    file(shop, Pages.pair(Pages.JOB, 2, -5, 3));
    JsonNode before = record(shop);
    CommandRun run = importInto(shop, card);

    assertThat(run.status()).isEqualTo(4);
    assertThat(run.err()).contains("Job " + JOB + " is known here, and differently");
    assertThat(record(shop)).isEqualTo(before);

    CommandRun asked = CommandRun.of(shop, "import", card.toString(), "--replace");
    assertThat(asked.status()).isZero();
    assertThat(record(shop)).isNotEqualTo(before);
    assertThat(CommandRun.of(shop, "show", JOB, "--json").out()).contains("pair.jpg");
  }

  @Test
  void aTamperedCardIsRefused() throws IOException {
    byte[] bytes = Files.readAllBytes(card);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    int digest = text.indexOf("recordSha256>") + "recordSha256>".length();
    bytes[digest] = (byte) (bytes[digest] == '0' ? '1' : '0');
    Files.write(card, bytes);

    assertRefused(card, "carries a record that was damaged or changed after it was printed");
  }

  @Test
  void aForeignFileIsRefused() throws IOException {
    Path sheet = folder.resolve("pair.pdf");
    CommandRun.of(shop, "print", "pair", "-o", sheet.toString());
    assertRefused(sheet, "is no finished card of ours: it names no record inside.");
    Path text = Files.writeString(folder.resolve("notes.txt"), "no PDF");
    assertRefused(text, "is no PDF that can be opened, so it is no finished card.");
  }

  @Test
  void aRecordOfALaterFormatIsRefused() throws IOException {
    BowRecord record = carried(card);
    byte[] json =
        RecordJson.line(record)
            .replace("\"version\":1", "\"version\":7")
            .getBytes(StandardCharsets.UTF_8);
    CardDetails details =
        new CardDetails(CardForm.CARD, CardPaper.A5, LocalDate.EPOCH, Shop.NONE, Optional.empty());
    try (OutputStream out = Files.newOutputStream(card)) {
      FinishedCard.write(record, details, json, out);
    }

    assertRefused(card, "cannot read (a record of format 7, where 1 is known): try a newer one.");
  }

  @Test
  void aMissingFileIsSaid() {
    CommandRun run = importInto(other, folder.resolve("none.pdf"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("There is no file");
  }

  private void assertRefused(Path file, String sentence) {
    CommandRun run = importInto(other, file);
    assertThat(run.status()).isEqualTo(4);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains("sheaf: " + file + " ", sentence);
    assertThat(other).doesNotExist();
  }

  private static void file(Path home, PageReading page) {
    try (Store store = Store.open(new HomeFolder(home), CommandRun.CLOCK)) {
      store.file("pair.jpg", page.toString().getBytes(StandardCharsets.UTF_8), List.of(page), "0");
    }
  }

  private static CommandRun print(Path home, Path file, String form) {
    return CommandRun.of(home, "card", JOB, "--as", form, "-o", file.toString());
  }

  private static CommandRun importInto(Path home, Path file) {
    return CommandRun.of(home, "import", file.toString());
  }

  private static JsonNode record(Path home) throws IOException {
    return new ObjectMapper()
        .readTree(CommandRun.of(home, "show", JOB, "--json").out())
        .get("record");
  }

  private static BowRecord carried(Path file) throws IOException {
    byte[] json = ((CarriedRecord.Whole) FinishedCard.carried(Files.readAllBytes(file))).json();
    return RecordJson.parse(new String(json, StandardCharsets.UTF_8));
  }
}
