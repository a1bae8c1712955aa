package sheaf.core.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

/** What the single kinds of sheet bear. */
class SheetContentsTest {

  static Stream<Layout> all() {
    return Layouts.all().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void whatIsShotAtHasNothingToFillIn(Layout layout) {
    List<MmRect> boxes = layout.fields().stream().flatMap(LayoutsTest::boxes).toList();

    if (layout.zones().isEmpty()) {
      layout.target().ifPresent(target -> assertThat(boxes).noneMatch(target::overlaps));
    }
    for (Zone zone : layout.zones()) {
      assertThat(boxes).noneMatch(zone.rect()::overlaps);
      assertThat(layout.target().orElseThrow().grow(1e-6).contains(zone.rect())).isTrue();
    }
    assertThat(layout.dots())
        .allMatch(dot -> layout.target().orElseThrow().grow(-dot.radius()).contains(dot.centre()));
  }

  @ParameterizedTest
  @MethodSource("all")
  void zonesAreNumberedFrom1AndHaveADotEach(Layout layout) {
    List<Zone> zones = layout.zones();

    for (int i = 0; i < zones.size(); i++) {
      MmRect zone = zones.get(i).rect();
      assertThat(zones.get(i).number()).isEqualTo(i + 1);
      assertThat(zones.stream().filter(other -> other.rect().grow(-0.01).overlaps(zone)))
          .hasSize(1);
      assertThat(zone.contains(layout.dots().get(i).centre())).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theNotesHaveRoomForSomeLinesAndNothingElse(Layout layout) {
    boolean back = layout.id().variant().isBack();

    assertThat(layout.notes().isPresent()).isEqualTo(back);
    layout
        .notes()
        .ifPresent(
            notes -> {
              assertThat(notes.height()).isGreaterThan(30);
              assertThat(LayoutsTest.boxes(layout).stream().filter(notes::overlaps)).hasSize(1);
            });
  }

  @ParameterizedTest
  @EnumSource
  void cardsComeOnLetterAndA4AndTargetsOnTheLargePapersToo(Variant variant) {
    boolean card = variant.kind().isCard() || variant.kind() == SheetKind.FORCE_DRAW;

    assertThat(Stream.of(Paper.values()).filter(variant::comesOn))
        .containsExactlyElementsOf(
            card ? List.of(Paper.LETTER, Paper.A4) : List.of(Paper.values()));
  }

  @ParameterizedTest
  @EnumSource
  void aReturnCardAsksWhatTheBenchCardOfItsBowAsks(BowType bow) {
    assertThat(keys(bow.returnFront())).hasSameElementsAs(keys(bow.front()));
    assertThat(keys(bow.returnBack())).hasSameElementsAs(keys(bow.back()));
  }

  @Test
  void squaresOfAGridAreOneInchOrTwoCentimetres() {
    assertThat(pitch(UnitSystem.INCHES)).allMatch(gap -> Math.abs(gap - 25.4) < 1e-9);
    assertThat(pitch(UnitSystem.METRIC)).allMatch(gap -> Math.abs(gap - 20) < 1e-9);
  }

  @Test
  void printedDistancesGoFromNearToFarAndWrittenOnesAreAskedFor() {
    Layout printed = Layouts.current(Variant.SET_DISTANCES, Paper.A4, UnitSystem.INCHES);
    Layout open = Layouts.current(Variant.OPEN_DISTANCES, Paper.A4, UnitSystem.INCHES);

    assertThat(printed.zones().stream().map(zone -> zone.distance().orElseThrow().toString()))
        .containsExactly("3 yd", "5 yd", "10 yd", "15 yd", "20 yd");
    assertThat(open.zones()).allMatch(zone -> zone.distance().isEmpty());
    assertThat(open.zones())
        .allSatisfy(zone -> assertThat(open.field("distance_" + zone.number())).isNotNull());
  }

  private static List<String> keys(Variant variant) {
    return Layouts.current(variant, Paper.A4, UnitSystem.METRIC).fields().stream()
        .map(Field::key)
        .toList();
  }

  /** Gaps between the upright lines of a group sheet, the middle one left out. */
  private static List<Double> pitch(UnitSystem units) {
    Layout layout = Layouts.current(Variant.GROUP_GRID, Paper.A3, units);
    MmRect target = layout.target().orElseThrow();
    double middle = target.centre().x();
    List<Double> lines =
        layout.ink().stream()
            .filter(ink -> ink instanceof Ink.Stroke)
            .map(ink -> (Ink.Stroke) ink)
            .filter(s -> s.from().x() == s.to().x() && s.from().y() == target.y())
            .map(s -> s.from().x())
            .filter(x -> x > middle - 1e-6)
            .toList();
    return IntStream.range(1, lines.size()).mapToObj(i -> lines.get(i) - lines.get(i - 1)).toList();
  }
}
