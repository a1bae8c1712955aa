package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

/** The pictures that a person looks at, of the samples of every sort. */
@Tag("slow")
class ProofOfSamplesTest {

  private static final int MOST_BYTES = 400_000;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "job-1-bench-card.jpg",
        "check-five-holes.jpg",
        "white-lid.png",
        "photo-backing.jpg"
      })
  void aProofIsASmallJpegAsWideAsAPhoneNeeds(String name) throws IOException {
    ReadPage page = read(name);
    byte[] proof = page.proof().orElseThrow();
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(proof));

    assertThat(proof).hasSizeLessThan(MOST_BYTES);
    assertThat(picture.getWidth()).isEqualTo(1080);
    assertThat(picture.getHeight()).isBetween(1500, 2600);
  }

  @ParameterizedTest
  @ValueSource(strings = "refused-half-a-sheet.jpg")
  void aPageWithoutASheetHasNoProof(String name) {
    assertThat(read(name).proof()).isEmpty();
  }

  private static ReadPage read(String name) {
    byte[] file =
        CommittedSamples.all().stream()
            .filter(sample -> sample.name().equals(name))
            .findAny()
            .orElseThrow()
            .file();
    List<ReadPage> pages = new ArrayList<>();
    new SheetReader().read(name, file, SheetReader.Proof.DRAW, pages::add);
    assertThat(pages).hasSize(1);
    return pages.get(0);
  }
}
