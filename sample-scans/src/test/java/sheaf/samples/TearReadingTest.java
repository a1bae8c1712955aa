package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.TearShot;
import sheaf.samples.tear.TearScene;
import sheaf.scanner.SheetReader;

/** Tear sheets of known truth, read. Geometry has no outside source here: it is held to itself. */
@Tag("slow")
class TearReadingTest {

  private static final MmPoint POINT = new MmPoint(60, 76);
  private static final MmPoint TAIL = new MmPoint(82, 58);

  private final SheetReader reader = new SheetReader();

  private PageReading read(byte[] file) {
    List<PageReading> pages = new ArrayList<>();
    reader.read("tears.jpg", file, SheetReader.Proof.SKIP, page -> pages.add(page.reading()));
    return pages.get(0);
  }

  private static CommittedSamples.CommittedSample sample(String name) {
    return CommittedSamples.all().stream()
        .filter(sample -> sample.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBowTunedToABulletHoleIsReadZoneByZone() {
    CommittedSamples.CommittedSample sample = sample("tears-backing.jpg");

    PageReading reading = read(sample.file());
    TearScore score = TearScore.of(0, reading, sample.truth());

    assertThat(reading.state()).isEqualTo(ReadingState.CHECK);
    assertThat(reading.reasons())
        .extracting(Reason::code)
        .hasSize(4)
        .containsOnly(ReasonCode.TEAR_ON_TRIAL);
    assertThat(score.faults()).isEmpty();
    assertThat(score.matches())
        .hasSize(4)
        .allMatch(match -> match.point() < 1.5 && match.tail() < 1.5);
  }

  @Test
  void aZoneHitTwiceIsLeftToAPerson() {
    PageReading reading = read(sample("check-tears-two-shots.jpg").file());

    assertThat(reading.state()).isEqualTo(ReadingState.CHECK);
    assertThat(reading.reasons()).extracting(Reason::code).contains(ReasonCode.TWO_SHOTS);
  }

  @Test
  void howeverTheSheetLiesOnTheGlassItsTearIsTheSame() {
    for (int turns = 0; turns < 4; turns++) {
      List<TearReading> tears = read(scan(turns)).tears();
      assertThat(tears).hasSize(1);
      assertThat(tears.get(0).point().distanceTo(POINT)).isLessThan(1.5);
      assertThat(tears.get(0).tail().distanceTo(TAIL)).isLessThan(1.5);
      assertThat(tears.get(0).point().distanceTo(tears.get(0).tail()))
          .isEqualTo(POINT.distanceTo(TAIL), within(1.5));
    }
  }

  private static byte[] scan(int turns) {
    SheetCode code = Studio.code(22, 2, Variant.FOUR_ZONES, Paper.LETTER);
    Scene sheet = Studio.scene(code, Behind.BLACK, Studio.PLAIN, List.of(), Map.of(), 203);
    TearScene scene =
        new TearScene(
            sheet,
            List.of(new TearShot(1, POINT, TAIL, 3)),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    FlatbedScan scanner =
        new FlatbedScan(200, false, turns, 1.1, sheet.scale(), 0.5, 1, 1.03, 0.0006, 5, 203);
    Scene.Ready ready = scene.make(Studio.PIXELS_PER_MM);
    return ScanFile.jpeg(scanner.scan(ready.page(), ready.backdrop()), 85, 200);
  }
}
