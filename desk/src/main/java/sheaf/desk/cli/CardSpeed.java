package sheaf.desk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import sheaf.core.record.BowRecord;
import sheaf.desk.json.RecordJson;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.CarriedRecord;
import sheaf.forms.FinishedCard;
import sheaf.forms.Shop;

/**
 * How long a finished card takes once everything is warm: the JSON of a record and the whole PDF,
 * in memory. The record is that of a card given to it.
 *
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.desk.cli.CardSpeed demo-out/card.pdf 500}
 */
public final class CardSpeed {

  private static final double NANOSECONDS = 1e6;

  private CardSpeed() {}

  /** Prints the median and the 95th percentile, in milliseconds, of the second half of the runs. */
  public static void main(String[] arguments) throws IOException {
    byte[] card = Files.readAllBytes(Path.of(arguments[0]));
    int runs = Integer.parseInt(arguments[1]);
    if (!(FinishedCard.carried(card) instanceof CarriedRecord.Whole whole)) {
      throw new IOException(arguments[0] + " is no finished card");
    }
    BowRecord record = RecordJson.parse(new String(whole.json(), UTF_8));
    for (CardForm form : CardForm.values()) {
      report(form, record, runs);
    }
  }

  private static void report(CardForm form, BowRecord record, int runs) throws IOException {
    double[] milliseconds = new double[runs];
    int bytes = 0;
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      bytes = print(form, record);
      milliseconds[i] = (System.nanoTime() - start) / NANOSECONDS;
    }
    double[] warm = Arrays.copyOfRange(milliseconds, runs / 2, runs);
    Arrays.sort(warm);
    System.out.printf(
        "%-10s median %.1f ms, 95th percentile %.1f ms, first %.0f ms, %d bytes%n",
        form.label(),
        warm[warm.length / 2],
        warm[(int) (0.95 * warm.length)],
        milliseconds[0],
        bytes);
  }

  private static int print(CardForm form, BowRecord record) throws IOException {
    CardPaper paper = form == CardForm.CARD ? CardPaper.HALF_LETTER : CardPaper.LETTER;
    CardDetails details =
        new CardDetails(form, paper, LocalDate.EPOCH, Shop.named("A shop"), Optional.empty());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FinishedCard.write(record, details, RecordJson.line(record).getBytes(UTF_8), out);
    return out.size();
  }
}
