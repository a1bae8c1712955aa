package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sheaf.core.group.Claim;
import sheaf.core.group.Drift;
import sheaf.core.group.Group;
import sheaf.core.job.SheetCode;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.GroupResult;
import sheaf.core.result.LineResult;
import sheaf.core.result.SightMove;
import sheaf.samples.CommittedSamples.CommittedSample;
import sheaf.scanner.SheetReader;

/** What the samples of other target sheets come to, beside what they were made with. */
@Tag("slow")
class TargetSamplesTest {

  private static CommittedSample sample(String name) {
    return CommittedSamples.all().stream()
        .filter(sample -> sample.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static PageReading read(CommittedSample sample) {
    List<PageReading> pages = new ArrayList<>();
    new SheetReader()
        .read(
            sample.name(),
            sample.file(),
            SheetReader.Proof.SKIP,
            page -> pages.add(page.reading()));
    assertThat(pages.get(0).state()).isEqualTo(ReadingState.READ);
    return pages.get(0);
  }

  /** The reading that a reader without any error would give of the holes. */
  private static PageReading perfect(CommittedSample sample) {
    List<Hole> holes =
        sample.truth().shots().stream()
            .map(
                shot ->
                    new Hole(
                        shot.axis(),
                        0,
                        sample.truth().shaft(),
                        shot.head(),
                        shot.blades(),
                        shot.cut(),
                        shot.aim(),
                        shot.zone(),
                        1))
            .toList();
    return new PageReading(
        sample.name(),
        List.of(),
        SheetCode.parse(sample.truth().code()),
        OptionalDouble.empty(),
        Optional.of(new PrintScale(sample.truth().scaleX(), sample.truth().scaleY())),
        holes,
        List.of());
  }

  @Test
  void theLineSheetShowsNoDriftAndItsDriftIsRight() {
    CommittedSample sample = sample("job-5-line-backing.jpg");
    LineResult line = LineResult.of(read(sample));
    Drift drift = line.drift().orElseThrow();
    Drift made = LineResult.of(perfect(sample)).drift().orElseThrow();

    assertThat(line.bands()).allMatch(band -> band.shots().size() == 2);
    assertThat(line.bands().get(4).distance()).contains(new Distance(20, Unit.YARD));
    assertThat(drift.mmPerMetre().value()).isCloseTo(made.mmPerMetre().value(), within(0.04));
    assertThat(drift.mmAtZero().value()).isCloseTo(made.mmAtZero().value(), within(0.4));
    assertThat(drift.drifts()).isEqualTo(Claim.NOT_SHOWN);
    assertThat(drift.isOff()).isEqualTo(Claim.NOT_SHOWN);
  }

  @Test
  void theGroupSheetTellsASizeThatIsRight() {
    CommittedSample sample = sample("job-6-group-backing.jpg");
    GroupResult result = GroupResult.of(read(sample));
    Group group = result.shots().orElseThrow();
    Group made = GroupResult.of(perfect(sample)).shots().orElseThrow();

    assertThat(result.distance()).contains(new Distance(20, Unit.YARD));
    assertThat(result.head()).isEqualTo(Head.FIELD);
    assertThat(group.size()).isEqualTo(5);
    assertThat(group.extremeSpread()).isCloseTo(made.extremeSpread(), within(0.5));
    assertThat(group.centre().distanceTo(made.centre())).isLessThan(0.3);
    assertThat(result.flyer()).isEmpty();
  }

  @Test
  void theSightInSheetMovesTheSightRightAndDown() {
    CommittedSample sample = sample("sight-in-a4-black.jpg");
    GroupResult result = GroupResult.of(read(sample));
    SightMove move = result.sightMove().orElseThrow();

    assertThat(result.distance()).contains(new Distance(18, Unit.METRE));
    // Made 42 mm right and 26 mm low.
    assertThat(move.right().value()).isCloseTo(42, within(0.3));
    assertThat(move.up().value()).isCloseTo(-26, within(0.3));
    assertThat(move.sideways()).isEqualTo(Claim.SHOWN);
    assertThat(move.upright()).isEqualTo(Claim.SHOWN);
  }
}
