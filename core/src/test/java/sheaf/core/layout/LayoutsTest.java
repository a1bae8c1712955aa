package sheaf.core.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

class LayoutsTest {

  static Stream<Layout> all() {
    return Layouts.all().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void aSheetHasEightMarksOfAtLeast12MmWithWhiteAroundThem(Layout layout) {
    assertThat(layout.marks()).hasSize(8);
    for (RegisterMark mark : layout.marks()) {
      assertThat(mark.square().width()).isGreaterThanOrEqualTo(12);
      MmRect white = mark.square().grow(mark.cell());
      assertThat(layout.page().grow(-6).contains(mark.square())).isTrue();
      assertThat(boxes(layout)).noneMatch(white::overlaps);
      assertThat(layout.codes()).noneMatch(white::overlaps);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theTwoCodesHaveRoomForModulesOfMoreThan6TenthsOfAMillimetre(Layout layout) {
    // ISO/IEC 18004: a symbol of version v has 17 + 4 v modules a side and a quiet zone of 4.
    int modules = 17 + 4 * 4 + 2 * 4;

    assertThat(layout.codes()).hasSize(2);
    assertThat(layout.codes())
        .allSatisfy(code -> assertThat(code.width() / modules).isGreaterThan(0.6));
  }

  @ParameterizedTest
  @MethodSource("all")
  void nothingIsPrintedInTheOuter6Millimetres(Layout layout) {
    assertThat(boxes(layout)).allMatch(layout.page().grow(-6)::contains);
  }

  @ParameterizedTest
  @MethodSource("all")
  void fieldsHaveDifferentKeysAndDoNotOverlap(Layout layout) {
    Set<String> keys = new HashSet<>();
    List<MmRect> boxes = layout.fields().stream().flatMap(LayoutsTest::boxes).toList();

    assertThat(layout.fields()).allMatch(field -> keys.add(field.key()));
    for (MmRect box : boxes) {
      assertThat(boxes.stream().filter(box::overlaps)).containsExactly(box);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void digitBoxesAreAtLeast6By8AndTickBoxesAtLeast4Millimetres(Layout layout) {
    for (Field field : layout.fields()) {
      if (field instanceof Field.Number number) {
        assertThat(number.digits())
            .allMatch(digit -> digit.box().width() >= 6 && digit.box().height() >= 8);
      } else {
        assertThat(boxes(field)).allMatch(box -> box.width() >= 4);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void digitBoxesAreLightAndTickBoxesBlack(Layout layout) {
    // A scan tells a light box from a pen; a tick box is found by its black edge.
    for (Field field : layout.fields()) {
      Ink.Tone tone = field instanceof Field.Number ? Ink.Tone.LIGHT : Ink.Tone.BLACK;

      assertThat(boxes(field))
          .allMatch(box -> layout.ink().contains(new Ink.Box(box, Drawing.LINE, tone)));
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void noLineIsThinnerThanAQuarterMillimetreAndNoLetterSmallerThan7Points(Layout layout) {
    for (Ink ink : layout.ink()) {
      if (ink instanceof Ink.Stroke stroke) {
        assertThat(stroke.width()).isGreaterThanOrEqualTo(0.25);
      } else if (ink instanceof Ink.Box box) {
        assertThat(box.width()).isGreaterThanOrEqualTo(0.25);
      } else if (ink instanceof Ink.Ring ring) {
        assertThat(ring.width()).isGreaterThanOrEqualTo(0.25);
      } else if (ink instanceof Ink.Label label) {
        assertThat(label.size()).isGreaterThanOrEqualTo(7);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theMarksAloneTellVariantAndPaper(Layout layout) {
    for (RegisterMark mark : layout.marks()) {
      MarkFamily family = MarkFamily.ofTag(mark.tag()).orElseThrow();

      assertThat(family.variant()).isEqualTo(layout.id().variant());
      assertThat(family.paper()).isEqualTo(layout.id().paper());
    }
  }

  @Test
  void noTwoFamiliesShareATag() {
    Set<Integer> tags = new HashSet<>();

    for (MarkFamily family : MarkFamily.values()) {
      assertThat(family.marks()).allMatch(mark -> tags.add(mark.tag()));
    }
  }

  @Test
  void aLayoutOfALaterVersionIsUnknownRatherThanGuessed() {
    LayoutId later = new LayoutId(Variant.TWO_DOTS, Paper.A4, UnitSystem.METRIC, 2);

    assertThat(Layouts.find(later)).isEmpty();
  }

  @Test
  void aCardOnALargePaperIsUnknownToo() {
    LayoutId large = new LayoutId(Variant.FRONT, Paper.A3, UnitSystem.METRIC, 1);

    assertThat(Layouts.find(large)).isEmpty();
  }

  static Stream<MmRect> boxes(Field field) {
    if (field instanceof Field.Choice choice) {
      return choice.options().stream().map(Field.Option::box);
    }
    return ((Field.Number) field).digits().stream().map(Field.Digit::box);
  }

  static List<MmRect> boxes(Layout layout) {
    return layout.ink().stream().map(LayoutsTest::extent).toList();
  }

  private static MmRect extent(Ink ink) {
    if (ink instanceof Ink.Label label) {
      return label.rect();
    }
    if (ink instanceof Ink.Box box) {
      return box.rect().grow(box.width() / 2);
    }
    if (ink instanceof Ink.Disc disc) {
      return MmRect.square(disc.centre(), 2 * disc.radius());
    }
    if (ink instanceof Ink.Ring ring) {
      return MmRect.square(ring.centre(), 2 * ring.radius() + ring.width());
    }
    Ink.Stroke stroke = (Ink.Stroke) ink;
    double left = Math.min(stroke.from().x(), stroke.to().x());
    double top = Math.min(stroke.from().y(), stroke.to().y());
    double width = Math.abs(stroke.to().x() - stroke.from().x());
    double height = Math.abs(stroke.to().y() - stroke.from().y());
    return new MmRect(
        left - stroke.width() / 2,
        top - stroke.width() / 2,
        width + stroke.width(),
        height + stroke.width());
  }
}
