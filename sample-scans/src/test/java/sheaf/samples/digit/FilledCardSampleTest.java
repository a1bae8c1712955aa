package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Variant;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.NotePicture;
import sheaf.core.reading.PageReading;
import sheaf.scanner.SheetReader;

/** The committed bench card that was filled in on both sides. */
class FilledCardSampleTest {

  private static final List<FilledCardSample> SIDES = FilledCardSample.both();

  private static final List<PageReading> PAGES = new ArrayList<>();

  @BeforeAll
  static void read() {
    SheetReader reader = new SheetReader();
    for (FilledCardSample side : SIDES) {
      reader.read(
          side.name(), side.file(), SheetReader.Proof.SKIP, page -> PAGES.add(page.reading()));
    }
  }

  @Test
  void isFrontAndBackOfOneCard() {
    assertThat(PAGES)
        .extracting(page -> page.sheet().orElseThrow().layout().variant())
        .containsExactly(Variant.FRONT, Variant.BACK);
    assertThat(PAGES).extracting(page -> page.sheet().orElseThrow().job()).hasSize(2);
  }

  @Test
  void isReadAsMeantOrAskedAbout() {
    for (int i = 0; i < SIDES.size(); i++) {
      for (FieldReading field : PAGES.get(i).fields()) {
        String meant = SIDES.get(i).answers().getOrDefault(field.key(), "");
        if (field.state() != State.CHECK) {
          assertThat(field.text()).as(field.key()).isEqualTo(meant);
        }
      }
    }
  }

  @Test
  void isMostlySure() {
    long filled = SIDES.stream().mapToLong(side -> side.answers().size()).sum();
    long sure =
        PAGES.stream()
            .flatMap(page -> page.fields().stream())
            .filter(field -> field.state() == State.READ)
            .count();
    assertThat(sure).isGreaterThanOrEqualTo(filled * 4 / 5);
  }

  @Test
  void bearsANoteThatIsTakenAsACleanPicture() throws Exception {
    assertThat(PAGES.get(0).note()).isEmpty();
    NotePicture note = PAGES.get(1).note().orElseThrow();
    assertThat(note.width()).isBetween(80.0, 130.0);
    assertThat(note.height()).isBetween(12.0, 25.0);
    BufferedImage picture =
        ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(note.png())));
    int white = 0;
    int dark = 0;
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        int tone = picture.getRaster().getSample(x, y, 0);
        white += tone == 255 ? 1 : 0;
        dark += tone < 80 ? 1 : 0;
      }
    }
    int all = picture.getWidth() * picture.getHeight();
    assertThat(white).isGreaterThan(all * 85 / 100);
    assertThat(dark).isGreaterThan(all / 100);
  }
}
