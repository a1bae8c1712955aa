package sheaf.samples.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.samples.CommittedSamples;
import sheaf.samples.CommittedSamples.CommittedSample;
import sheaf.samples.Score;
import sheaf.samples.scene.Truth;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

/** Reads pictures and says what became of them. */
final class Readings {

  private static final SheetReader READER = new SheetReader();

  private Readings() {}

  static CommittedSample sample(String name) {
    return CommittedSamples.all().stream()
        .filter(sample -> sample.name().equals(name))
        .findAny()
        .orElseThrow();
  }

  static PageReading of(byte[] file) {
    List<ReadPage> pages = new ArrayList<>();
    READER.read("picture", file, SheetReader.Proof.SKIP, pages::add);
    assertThat(pages).hasSize(1);
    return pages.get(0).reading();
  }

  static PageReading of(BufferedImage picture) {
    return of(Pictures.file(picture));
  }

  /** The page is read, nothing is doubted, and all of it is true. */
  static void assertRight(PageReading reading, Truth truth) {
    assertThat(reading.reasons()).isEmpty();
    assertThat(Score.of(0, reading, truth).faults()).isEmpty();
  }

  /** What is claimed for sure is true. */
  static void assertNotSilentlyWrong(PageReading reading, Truth truth) {
    Score score = Score.of(0, reading, truth);
    assertThat(score.silentlyWrong()).as(score.toString()).isFalse();
  }

  static void assertRefused(PageReading reading, ReasonCode code, String words) {
    assertThat(reading.state()).isEqualTo(ReadingState.REFUSED);
    assertThat(reading.reasons()).extracting(Reason::code).containsExactly(code);
    assertThat(reading.reasons().get(0).message()).contains(words);
  }

  static void assertAsks(PageReading reading, ReasonCode code, String words) {
    assertThat(reading.state()).isEqualTo(ReadingState.CHECK);
    assertThat(reading.reasons())
        .anySatisfy(
            reason -> {
              assertThat(reason.code()).isEqualTo(code);
              assertThat(reason.message()).contains(words);
            });
  }
}
