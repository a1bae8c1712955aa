package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.SheetInPicture;

/**
 * What is seen in the digit boxes of a made scan.
 *
 * @param fields box by box, those of a field together
 */
record SeenBoxes(List<List<SeenBox>> fields) {

  /**
   * One box.
   *
   * @param meant what was written: a digit, 10 for what is none, -1 for nothing
   * @param picture of it; empty when the box was taken for blank
   */
  record SeenBox(int meant, Optional<DigitPicture> picture) {}

  /** Something to write, and what it means. */
  record Written(PenMark mark, int meant) {}

  /** A compound bow's card, its front and back and both systems of units in turn. */
  static SheetCode code(long number) {
    Variant side = number % 2 == 0 ? Variant.FRONT : Variant.BACK;
    boolean inches = number % 4 < 2;
    Paper paper = inches ? Paper.LETTER : Paper.A4;
    UnitSystem units = inches ? UnitSystem.INCHES : UnitSystem.METRIC;
    JobId job = JobId.random(new SplittableRandom(number));
    return new SheetCode(job, 1, Layouts.current(side, paper, units).id());
  }

  /** Cards with all digits of a set, one after the other. */
  static List<SeenBoxes> digits(DigitSet digits, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Iterator<Written> all =
        IntStream.range(0, digits.size())
            .mapToObj(
                i -> new Written(Marks.hand(digits.pictures()[i], random), digits.labels()[i]))
            .iterator();
    List<SeenBoxes> cards = new ArrayList<>();
    while (all.hasNext()) {
      cards.add(
          of(
              code(cards.size()),
              () -> all.hasNext() ? Optional.of(all.next()) : Optional.empty(),
              random.nextLong()));
    }
    return cards;
  }

  /** Cards of which all boxes hold something that is no digit. */
  static List<SeenBoxes> rubbish(DigitSet digits, int cards, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, cards)
        .mapToObj(
            i ->
                of(
                    code(i),
                    () -> Optional.of(new Written(Marks.rubbish(digits, random), 10)),
                    random.nextLong()))
        .toList();
  }

  /** Cards nobody wrote on. */
  static List<SeenBoxes> blank(int cards, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, cards)
        .mapToObj(i -> of(code(i), Optional::empty, random.nextLong()))
        .toList();
  }

  private static List<Field.Number> numbers(Layout layout) {
    return layout.fields().stream()
        .filter(Field.Number.class::isInstance)
        .map(Field.Number.class::cast)
        .toList();
  }

  /** Fills all boxes, scans at 300 dpi and looks; throws when the scan is refused. */
  static SeenBoxes of(SheetCode code, Supplier<Optional<Written>> writing, long seed) {
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    List<Hand> hands = new ArrayList<>();
    SplittableRandom random = new SplittableRandom(seed);
    Map<MmRect, Integer> meant = new HashMap<>();
    for (Field.Number field : numbers(layout)) {
      for (MmRect box : field.boxes()) {
        Optional<Written> written = writing.get();
        written.ifPresent(some -> hands.add(Hand.in(box, some.mark(), random)));
        meant.put(box, written.map(Written::meant).orElse(-1));
      }
    }
    byte[] scan = FilledCard.scan(code, hands, 300, random.nextLong());
    try (PictureFile file = PictureFile.open(scan);
        Picture picture = file.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      List<List<SeenBox>> fields = new ArrayList<>();
      for (Field.Number field : numbers(layout)) {
        List<SeenBox> boxes = new ArrayList<>();
        for (MmRect box : field.boxes()) {
          boxes.add(new SeenBox(meant.get(box), DigitPicture.of(sheet.flat(), box)));
        }
        fields.add(boxes);
      }
      return new SeenBoxes(fields);
    } catch (UnreadableException e) {
      throw new IllegalStateException("a made card was refused: " + e.reason(), e);
    }
  }
}
