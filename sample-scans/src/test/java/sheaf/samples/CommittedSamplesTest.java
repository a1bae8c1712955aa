package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.SheetKind;
import sheaf.samples.CommittedSamples.CommittedSample;

class CommittedSamplesTest {

  private static final List<CommittedSample> ALL = CommittedSamples.all();

  private static SheetCode code(CommittedSample sample) {
    return SheetCode.parse(sample.truth().code()).orElseThrow();
  }

  @Test
  void thereAreAtLeastNineAndEachIsSmall() {
    assertThat(ALL).hasSizeGreaterThanOrEqualTo(9);
    assertThat(ALL).allMatch(sample -> sample.file().length < 600_000);
  }

  @Test
  void readingEndsInEachOfTheThreeWays() {
    Set<String> endings = ALL.stream().map(s -> s.truth().expected()).collect(Collectors.toSet());
    assertThat(endings).containsExactlyInAnyOrder("read", "check", "refused");
  }

  @Test
  void theyLieOnBackingBlackAndWhiteAndOnABoard() {
    assertThat(ALL)
        .extracting(sample -> sample.truth().behind())
        .contains("backing", "black", "white", "foam");
    assertThat(ALL).extracting(sample -> sample.truth().colour()).contains(true, false);
  }

  @Test
  void theFirstFourAreTheBenchCardAndPairSheetsOfOneJob() {
    List<SheetCode> job = ALL.subList(0, 4).stream().map(CommittedSamplesTest::code).toList();
    assertThat(job).extracting(SheetCode::job).containsOnly(job.get(0).job());
    assertThat(job).extracting(SheetCode::number).containsExactly(1, 2, 3, 4);
    assertThat(job.get(0).layout().kind()).isEqualTo(SheetKind.BENCH_CARD);
    assertThat(ALL.subList(1, 4)).allMatch(s -> s.truth().ticks().get("distance").equals("20"));
  }

  @Test
  void overTheJobTheBroadheadsComeToTheFieldPoints() {
    double first = ALL.get(1).truth().offset().orElseThrow().length();
    double last = ALL.get(3).truth().offset().orElseThrow().length();
    assertThat(first).isGreaterThan(30);
    assertThat(last).isLessThan(5);
  }

  @Test
  void theJobEndsWithALineSheetAndAGroupSheet() {
    CommittedSample line = ALL.get(4);
    CommittedSample group = ALL.get(5);
    assertThat(code(line).job()).isEqualTo(code(ALL.get(0)).job());
    assertThat(code(group).job()).isEqualTo(code(ALL.get(0)).job());
    assertThat(code(line).layout().kind()).isEqualTo(SheetKind.LINE);
    assertThat(line.truth().shots())
        .extracting(shot -> shot.zone().orElseThrow())
        .containsExactly(1, 1, 2, 2, 3, 3, 4, 4, 5, 5);
    assertThat(code(group).layout().kind()).isEqualTo(SheetKind.GROUP);
    assertThat(group.truth().shots()).hasSize(5);
  }

  @Test
  void scansStateTheirResolutionAndPhotosDoNot() {
    assertThat(ALL).allMatch(sample -> sample.truth().statesDpi() == sample.truth().dpi() > 0);
  }

  @Test
  @Tag("slow")
  void theMakerStillMakesThem() throws IOException {
    for (int i = 0; i < ALL.size(); i++) {
      SampleList.Entry entry = SampleList.all().get(i);
      Sample made = entry.maker().get();
      assertThat(made.truth()).as(entry.name()).isEqualTo(ALL.get(i).truth());
      // Encoders differ between Java versions; what is seen does not.
      assertThat(difference(made.file(), ALL.get(i).file())).as(entry.name()).isLessThan(0.5);
    }
  }

  /** Mean difference of the pictures in grey levels. */
  private static double difference(byte[] one, byte[] other) throws IOException {
    BufferedImage a = ImageIO.read(new ByteArrayInputStream(one));
    BufferedImage b = ImageIO.read(new ByteArrayInputStream(other));
    assertThat(b.getWidth()).isEqualTo(a.getWidth());
    assertThat(b.getHeight()).isEqualTo(a.getHeight());
    double sum = 0;
    int count = 0;
    for (int y = 0; y < a.getHeight(); y += 3) {
      for (int x = 0; x < a.getWidth(); x += 3) {
        sum += Math.abs((a.getRGB(x, y) >> 8 & 0xFF) - (b.getRGB(x, y) >> 8 & 0xFF));
        count++;
      }
    }
    return sum / count;
  }
}
