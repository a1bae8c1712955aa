package sheaf.desk.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;

class PageJsonRoundTripTest {

  @Property(tries = 300)
  void readingBackAndWritingAgainGivesTheSameLine(@ForAll("pages") PageReading page) {
    String line = PageJson.line(page);
    assertThat(PageJson.line(PageJson.parse(line))).isEqualTo(line);
  }

  @Property(tries = 300)
  void nothingMovesByMoreThanTheRounding(@ForAll("pages") PageReading page) {
    PageReading back = PageJson.parse(PageJson.line(page));
    assertThat(back.sheet()).isEqualTo(page.sheet());
    assertThat(back.state()).isEqualTo(page.state());
    assertThat(back.source()).isEqualTo(page.source());
    assertThat(back.holes()).hasSameSizeAs(page.holes());
    assertThat(back.tears()).extracting(TearReading::zone).isEqualTo(zones(page));
    for (int i = 0; i < page.holes().size(); i++) {
      assertThat(back.holes().get(i).axis().distanceTo(page.holes().get(i).axis()))
          .isLessThan(0.0072); // the diagonal of half a hundredth both ways
    }
  }

  private static List<Integer> zones(PageReading page) {
    return page.tears().stream().map(TearReading::zone).toList();
  }

  @Provide
  Arbitrary<PageReading> pages() {
    return Combinators.combine(
            Arbitraries.strings(),
            reasons().list().ofMaxSize(3),
            sheets().optional(),
            Arbitraries.doubles().between(1, 50).optional(),
            scales().optional(),
            holes().list().ofMaxSize(6),
            tears().list().ofMaxSize(4),
            fields().list().ofMaxSize(4).uniqueElements(FieldReading::key))
        .flatAs(
            (source, reasons, sheet, resolution, scale, holes, tears, fields) ->
                Arbitraries.doubles()
                    .between(0, 2)
                    .optional()
                    .map(
                        within ->
                            new PageReading(
                                source,
                                reasons,
                                sheet,
                                maybe(resolution),
                                scale,
                                holes,
                                tears,
                                fields,
                                maybe(within))));
  }

  private static Arbitrary<Reason> reasons() {
    return Combinators.combine(
            Arbitraries.of(ReasonCode.class), Arbitraries.strings(), points().optional())
        .as(Reason::new);
  }

  private static Arbitrary<SheetCode> sheets() {
    return Combinators.combine(
            Arbitraries.randoms().map(JobId::random),
            Arbitraries.integers().between(1, 999),
            Arbitraries.of(Layouts.all()).map(Layout::id))
        .as(SheetCode::new);
  }

  private static Arbitrary<PrintScale> scales() {
    Arbitrary<Double> scale = Arbitraries.doubles().between(0.9, 1.1);
    return Combinators.combine(scale, scale).as(PrintScale::new);
  }

  private static Arbitrary<MmPoint> points() {
    Arbitrary<Double> place = Arbitraries.doubles().between(-20, 300);
    return Combinators.combine(place, place).as(MmPoint::new);
  }

  private static Arbitrary<Hole> holes() {
    return Combinators.combine(
            points(),
            Arbitraries.doubles().between(0, 3),
            Arbitraries.doubles().between(4, 12),
            Arbitraries.of(Head.class),
            Arbitraries.integers().between(0, 4),
            Arbitraries.doubles().between(0, 60),
            Arbitraries.of(Aim.class),
            Arbitraries.doubles().between(0, 1))
        .as(Hole::new);
  }

  private static Arbitrary<TearReading> tears() {
    Arbitrary<Double> error = Arbitraries.doubles().between(0, 3);
    return Combinators.combine(
            Arbitraries.integers().between(1, 4),
            points(),
            error,
            points(),
            error,
            Arbitraries.of(TearReading.UNKNOWN_VANES, 3, 4),
            Arbitraries.doubles().between(0, 1))
        .as(TearReading::new);
  }

  private static Arbitrary<FieldReading> fields() {
    return Combinators.combine(
            Arbitraries.strings().alpha().ofMinLength(1),
            Arbitraries.of(FieldReading.State.class),
            Arbitraries.strings(),
            Arbitraries.doubles().between(-1000, 1000).optional(),
            Arbitraries.of(Unit.class).optional(),
            Arbitraries.doubles().between(0, 1))
        .as(
            (key, state, text, value, unit, confidence) ->
                new FieldReading(key, state, text, maybe(value), unit, confidence));
  }

  private static OptionalDouble maybe(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
