package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.forms.Pdf.Letter;

/** Where the words of a blank sheet end up with the typeface they are printed in. */
class SheetWordsTest {

  /** Letters of one word may touch; those of two words may not. */
  private static final double TOUCHING = 0.15;

  /** What a letter's box may stand over its line's by, in millimetres. */
  private static final double ROUNDING = 0.2;

  /** Each sheet is printed once for all tests that only look at it. */
  private static final Map<SheetCode, List<Letter>> LETTERS = new HashMap<>();

  private static final List<JobId> JOBS = jobs();

  /** With the most wide letters; every sheet that is looked at here bears it. */
  private static final JobId WIDEST =
      JOBS.stream().max(Comparator.comparingLong(SheetWordsTest::wideLetters)).orElseThrow();

  static Stream<Layout> layouts() {
    return Layouts.all().stream();
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void noWordsOverlapEachOtherOrReachTheOuter6Millimetres(Layout layout) {
    List<Letter> letters = print(layout);

    assertThat(letters).hasSizeGreaterThan(300);
    assertThat(letters).allMatch(letter -> layout.page().grow(-6).contains(letter.box()));
    assertThat(overlapping(letters)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void everyWordIsAtLeast7PointsHigh(Layout layout) {
    assertThat(print(layout)).allMatch(letter -> letter.size() >= 6.99);
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void everyWordStaysInTheRectangleThatTheLayoutGivesIt(Layout layout) {
    List<MmRect> rooms =
        layout.ink().stream()
            .filter(Ink.Label.class::isInstance)
            .map(ink -> ((Ink.Label) ink).rect().grow(ROUNDING))
            .toList();

    assertThat(print(layout))
        .allMatch(letter -> rooms.stream().anyMatch(room -> room.contains(letter.box())));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void noLineRunsThroughAWord(Layout layout) {
    List<MmRect> lines = layout.ink().stream().flatMap(SheetWordsTest::lines).toList();

    for (Letter letter : print(layout)) {
      assertThat(lines).as(letter.toString()).noneMatch(letter.box().grow(-TOUCHING)::overlaps);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void noWordTouchesABoxACodeAMarkOrADot(Layout layout) {
    List<MmRect> taken = new ArrayList<>(layout.codes());
    layout.marks().stream().map(SheetWordsTest::withWhite).forEach(taken::add);
    layout.fields().stream().flatMap(SheetWordsTest::boxes).forEach(taken::add);
    layout.dots().forEach(dot -> taken.add(MmRect.square(dot.centre(), 2 * dot.radius())));

    for (Letter letter : print(layout)) {
      assertThat(taken).as(letter.toString()).noneMatch(letter.box()::overlaps);
    }
  }

  @Test
  void anyJobIdFits() {
    List<Layout> layouts = Layouts.all();
    List<SheetCode> sheets = new ArrayList<>();
    for (JobId job : JOBS) {
      LayoutId layout = layouts.get(sheets.size() % layouts.size()).id();
      sheets.add(new SheetCode(job, 999, layout));
    }

    // A text that is longer than the room it was given is refused.
    assertThatCode(() -> BlankSheets.write(sheets, OutputStream.nullOutputStream()))
        .doesNotThrowAnyException();
  }

  private static List<JobId> jobs() {
    SplittableRandom random = new SplittableRandom(7);
    return Stream.generate(() -> JobId.random(random)).limit(200).toList();
  }

  private static long wideLetters(JobId job) {
    return job.spoken().chars().filter(letter -> letter == 'W' || letter == 'M').count();
  }

  private static List<Letter> print(Layout layout) {
    SheetCode code = new SheetCode(WIDEST, 999, layout.id());
    return LETTERS.computeIfAbsent(
        code,
        key -> {
          try {
            return Pdf.of(out -> BlankSheets.write(List.of(key), out)).letters(0);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  static List<String> overlapping(List<Letter> letters) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < letters.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (letters.get(i).box().grow(-TOUCHING).overlaps(letters.get(j).box().grow(-TOUCHING))) {
          found.add(letters.get(j) + " and " + letters.get(i));
        }
      }
    }
    return found;
  }

  /** The lines of a thing that is printed; the outline of a box is four. */
  private static Stream<MmRect> lines(Ink ink) {
    if (ink instanceof Ink.Stroke stroke) {
      return Stream.of(line(stroke.from(), stroke.to(), stroke.width()));
    }
    if (ink instanceof Ink.Box box) {
      MmPoint topLeft = new MmPoint(box.rect().x(), box.rect().y());
      MmPoint topRight = new MmPoint(box.rect().right(), box.rect().y());
      MmPoint bottomLeft = new MmPoint(box.rect().x(), box.rect().bottom());
      MmPoint bottomRight = new MmPoint(box.rect().right(), box.rect().bottom());
      return Stream.of(
          line(topLeft, topRight, box.width()),
          line(topRight, bottomRight, box.width()),
          line(bottomLeft, bottomRight, box.width()),
          line(topLeft, bottomLeft, box.width()));
    }
    return Stream.empty();
  }

  private static MmRect line(MmPoint from, MmPoint to, double width) {
    double x = Math.min(from.x(), to.x()) - width / 2;
    double y = Math.min(from.y(), to.y()) - width / 2;
    return new MmRect(
        x, y, Math.abs(to.x() - from.x()) + width, Math.abs(to.y() - from.y()) + width);
  }

  private static MmRect withWhite(RegisterMark mark) {
    return mark.square().grow(mark.cell());
  }

  private static Stream<MmRect> boxes(Field field) {
    if (field instanceof Field.Choice choice) {
      return choice.options().stream().map(Field.Option::box);
    }
    return ((Field.Number) field).digits().stream().map(Field.Digit::box);
  }
}
