package sheaf.samples.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.samples.damage.Pictures.blurred;
import static sheaf.samples.damage.Pictures.clamp;
import static sheaf.samples.damage.Pictures.noisy;
import static sheaf.samples.damage.Pictures.scaled;
import static sheaf.samples.damage.Pictures.toned;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.ReasonCode;
import sheaf.samples.CommittedSamples.CommittedSample;
import sheaf.samples.scan.ScanFile;

/** Pictures of a whole sheet, badly taken: a ticked card and a shot sheet. */
@Tag("slow")
class PoorPictureTest {

  private static final CommittedSample CARD = Readings.sample("job-1-bench-card.jpg");
  private static final CommittedSample PAIR = Readings.sample("job-2-first-pair-backing.jpg");
  private static final CommittedSample WHITE_LID = Readings.sample("white-lid.png");
  private static final CommittedSample PHOTO = Readings.sample("photo-backing.jpg");

  static Stream<Arguments> harmless() {
    return ofBoth(
        List.of(
            mishap("JPEG quality 30", picture -> Pictures.of(ScanFile.jpeg(picture, 30, 0))),
            mishap("upside down", Pictures::upsideDown),
            mishap("a little out of focus", picture -> blurred(picture, 1.5)),
            mishap("over-exposed", picture -> toned(picture, grey -> clamp(1.6 * grey))),
            mishap("under-exposed", picture -> toned(picture, grey -> grey / 4)),
            mishap(
                "red light", picture -> toned(picture, g -> g, g -> g * 6 / 10, g -> g * 45 / 100)),
            mishap(
                "blue light",
                picture -> toned(picture, g -> g * 45 / 100, g -> g * 7 / 10, g -> g)),
            mishap("green light", picture -> toned(picture, g -> g / 2, g -> g, g -> g / 2)),
            mishap("black and white", picture -> toned(picture, grey -> grey > 128 ? 255 : 0)),
            mishap("squeezed, of unknown size", picture -> scaled(picture, 0.8, 1))));
  }

  static Stream<Arguments> harmful() {
    return ofBoth(
        List.of(
            mishap("burnt out", picture -> toned(picture, grey -> clamp(3.0 * grey))),
            mishap("washed out", picture -> toned(picture, grey -> clamp(200 + 0.2 * grey))),
            mishap("nearly white", picture -> toned(picture, grey -> clamp(235 + 0.08 * grey))),
            mishap("grainy", picture -> noisy(picture, 25, 2)),
            mishap(
                "taken in the dark", picture -> noisy(toned(picture, g -> g * 15 / 100), 4, 1))));
  }

  static Stream<Arguments> hopeless() {
    return ofBoth(
        List.of(
            mishap("out of focus", picture -> blurred(picture, 4)),
            mishap("far out of focus", picture -> blurred(picture, 10)),
            mishap("nearly black", picture -> toned(picture, grey -> grey * 3 / 100))));
  }

  private static Named<UnaryOperator<BufferedImage>> mishap(
      String name, UnaryOperator<BufferedImage> how) {
    return Named.of(name, how);
  }

  private static Stream<Arguments> ofBoth(List<Named<UnaryOperator<BufferedImage>>> mishaps) {
    return Stream.of(CARD, PAIR)
        .flatMap(
            sample ->
                mishaps.stream()
                    .map(mishap -> Arguments.of(mishap, Named.of(sample.name(), sample))));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("harmless")
  void whatAPersonCouldReadWithoutEffortIsReadRightly(
      UnaryOperator<BufferedImage> mishap, CommittedSample sample) {
    Readings.assertRight(read(mishap, sample), sample.truth());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("harmful")
  void whatIsHardToSeeIsAskedAboutOrRight(
      UnaryOperator<BufferedImage> mishap, CommittedSample sample) {
    PageReading reading = read(mishap, sample);

    assertThat(reading.state()).isNotEqualTo(ReadingState.REFUSED);
    Readings.assertNotSilentlyWrong(reading, sample.truth());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("hopeless")
  void whatCannotBeSeenIsRefusedWithWhatToDo(
      UnaryOperator<BufferedImage> mishap, CommittedSample sample) {
    PageReading reading = read(mishap, sample);

    assertThat(reading.state()).isEqualTo(ReadingState.REFUSED);
    assertThat(reading.reasons().get(0).message()).containsPattern("sharp|more light|blank");
  }

  @Test
  void aHundredDotsAnInchAreReadRightlyAndNinetyAreRefused() {
    for (CommittedSample sample : List.of(CARD, PAIR)) {
      double dot = 1.0 / sample.truth().dpi();
      BufferedImage picture = Pictures.of(sample.file());

      Readings.assertRight(Readings.of(scaled(picture, 100 * dot, 100 * dot)), sample.truth());
      Readings.assertRefused(
          Readings.of(scaled(picture, 90 * dot, 90 * dot)),
          ReasonCode.TOO_COARSE,
          "scan at 150 dpi or more");
    }
  }

  @Test
  void paleHolesInACoarseScanAreAskedAbout() {
    double coarse = 105.0 / WHITE_LID.truth().dpi();
    BufferedImage picture = scaled(Pictures.of(WHITE_LID.file()), coarse, coarse);

    Readings.assertAsks(
        Readings.of(blurred(picture, 1)), ReasonCode.CENTRE_UNSURE, "lay the backing behind");
  }

  @Test
  void aPoorPhotoIsNeverWrongInSilence() {
    BufferedImage photo = Pictures.of(PHOTO.file());
    for (BufferedImage poor :
        List.of(
            Pictures.of(ScanFile.jpeg(photo, 30, 0)),
            scaled(photo, 0.5, 0.5),
            blurred(photo, 2),
            toned(photo, grey -> clamp(2.0 * grey)),
            toned(photo, grey -> grey / 5))) {
      Readings.assertNotSilentlyWrong(Readings.of(poor), PHOTO.truth());
    }
  }

  private static PageReading read(UnaryOperator<BufferedImage> mishap, CommittedSample sample) {
    return Readings.of(mishap.apply(Pictures.of(sample.file())));
  }
}
