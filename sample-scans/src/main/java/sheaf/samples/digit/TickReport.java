package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.NumberJudge;
import sheaf.samples.Terminal;
import sheaf.scanner.field.FieldReader;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.SheetInPicture;

/**
 * Says how well ticks are read: each answer of many made cards, half of them dirty, against what
 * was ticked.
 */
public final class TickReport {

  private static final String OPEN = "?";
  private static final List<Integer> RESOLUTIONS = List.of(200, 240, 300, 300, 400);

  private final RandomGenerator random;
  private int answers;
  private int asked;
  private int boxes;
  private final List<String> wrong = new ArrayList<>();
  private int askedNeedlessly;

  private TickReport(RandomGenerator random) {
    this.random = random;
  }

  /**
   * Makes, scans and reads cards.
   *
   * @param args how many cards, and the seed
   */
  public static void main(String[] args) {
    NativeLibraries.load();
    TickReport report = new TickReport(new SplittableRandom(Long.parseLong(args[1])));
    for (int i = 0; i < Integer.parseInt(args[0]); i++) {
      report.card(i);
    }
    Terminal.out()
        .printf(
            "%d answers in %d boxes: %d silently wrong, %d asked about, %d of them needlessly%n",
            report.answers,
            report.boxes,
            report.wrong.size(),
            report.asked,
            report.askedNeedlessly);
    report.wrong.forEach(Terminal.out()::println);
  }

  private void card(int number) {
    // Most choices are on the front; its two systems of units have them alike.
    SheetCode code = SeenBoxes.code(2L * number);
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    double pen = random.nextDouble(0.25, 0.9);
    List<Hand> hands = new ArrayList<>();
    Map<String, String> truth = new TreeMap<>();
    for (Field field : layout.fields()) {
      if (field instanceof Field.Choice choice) {
        truth.put(choice.key(), tick(choice, pen, hands));
        boxes += choice.options().size();
      }
    }
    int dpi = RESOLUTIONS.get(random.nextInt(RESOLUTIONS.size()));
    FilledCard.Dirt dirt = number % 2 == 0 ? FilledCard.Dirt.LITTLE : FilledCard.Dirt.MUCH;
    byte[] scan = FilledCard.scan(code, hands, dpi, dirt, random.nextLong());
    try (PictureFile file = PictureFile.open(scan);
        Picture picture = file.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      FieldReader.measure(sheet.flat(), layout, NumberJudge.USUALLY_SURE)
          .read(List.of())
          .readings()
          .stream()
          .filter(reading -> truth.containsKey(reading.key()))
          .forEach(reading -> compare(number, reading, truth.get(reading.key())));
    } catch (UnreadableException e) {
      throw new IllegalStateException("a made card was refused: " + e.reason(), e);
    }
  }

  /** Ticks as people do, and says what was meant: empty for nothing, {@link #OPEN} for a doubt. */
  private String tick(Field.Choice choice, double pen, List<Hand> hands) {
    int first = random.nextInt(choice.options().size());
    int second = (first + 1) % choice.options().size();
    double kind = random.nextDouble();
    if (kind < 0.2) {
      return "";
    }
    Field.Option ticked = choice.options().get(first);
    if (kind < 0.25) {
      hands.add(Tick.WITHDRAWN.in(ticked.box(), pen, random));
      return OPEN;
    }
    hands.add(Tick.draw(random).in(ticked.box(), pen, random));
    Field.Option other = choice.options().get(second);
    if (kind < 0.32) {
      hands.add(Tick.WITHDRAWN.in(other.box(), pen, random));
    } else if (kind < 0.37) {
      hands.add(Tick.draw(random).in(other.box(), pen, random));
      return OPEN;
    }
    return ticked.value();
  }

  private void compare(int card, FieldReading reading, String meant) {
    answers++;
    if (reading.state() == State.CHECK) {
      asked++;
      askedNeedlessly += meant.equals(OPEN) ? 0 : 1;
    } else if (!reading.text().equals(meant)) {
      wrong.add(
          "card %d, %s: meant \"%s\", read \"%s\""
              .formatted(card, reading.key(), meant, reading.text()));
    }
  }
}
