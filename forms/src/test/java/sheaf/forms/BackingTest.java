package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

class BackingTest {

  private static final int DPI = 72;

  @ParameterizedTest
  @EnumSource
  void theColourLiesBehindEveryTarget(Paper paper) throws IOException {
    BufferedImage page = Pdf.of(out -> Backing.write(paper, 1, out)).colour(0, DPI);

    for (Layout layout : Layouts.all()) {
      if (layout.id().paper() == paper && layout.target().isPresent()) {
        MmRect target = layout.target().get();
        for (double x = target.x(); x <= target.right(); x += 5) {
          for (double y = target.y(); y <= target.bottom(); y += 5) {
            Color seen = new Color(page.getRGB(pixel(x), pixel(y)));
            assertThat(seen).isEqualTo(Backing.COLOUR);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void aMarginStaysWhiteForThePrinter(Paper paper) throws IOException {
    BufferedImage page = Pdf.of(out -> Backing.write(paper, 1, out)).colour(0, DPI);

    for (int y = 0; y < page.getHeight(); y++) {
      assertThat(new Color(page.getRGB(pixel(4), y))).isEqualTo(Color.WHITE);
      assertThat(new Color(page.getRGB(page.getWidth() - 1 - pixel(4), y))).isEqualTo(Color.WHITE);
    }
  }

  @Test
  void everyCopySaysWhatItIsFor() throws IOException {
    Pdf pdf = Pdf.of(out -> Backing.write(Paper.A4, 2, out));

    assertThat(pdf.text()).containsPattern("Backing.*Backing");
    assertThat(pdf.letters(0))
        .allMatch(letter -> new MmRect(0, 0, 210, 297).grow(-6).contains(letter.box()));
    try (PDDocument document = pdf.open()) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      assertThat(document.getPage(1).getMediaBox().getHeight()).isEqualTo(841.89f, within(0.01f));
    }
  }

  @Test
  void fewerThanOneCopyIsRefused() {
    assertThatThrownBy(() -> Backing.write(Paper.A4, 0, OutputStream.nullOutputStream()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("copies must be at least 1, not 0");
  }

  private static int pixel(double mm) {
    return (int) Math.round(mm / 25.4 * DPI);
  }
}
