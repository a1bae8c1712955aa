package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.forms.Logo;

class LogoFileTest {

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Logo.Format.class)
  void pictureIsKeptByteForByte(Logo.Format format) throws Exception {
    byte[] content = Pictures.file(format.name(), 300, 120);
    assertThat(LogoFile.read(file(content))).isEqualTo(new Logo(format, 300, 120, content));
  }

  /** PDFBox embeds what is taken, with the same size: no picture fails at the printer. */
  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_BYTE_GRAY,
        BufferedImage.TYPE_USHORT_GRAY,
        BufferedImage.TYPE_BYTE_BINARY,
        BufferedImage.TYPE_BYTE_INDEXED
      })
  void everyKindOfPngThatIsTakenCanBePrinted(int kind) throws Exception {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 120, kind), "png", png);
    Logo logo = LogoFile.read(file(png.toByteArray()));
    try (PDDocument document = new PDDocument()) {
      PDImageXObject image = PDImageXObject.createFromByteArray(document, logo.file(), "logo");
      assertThat(image.getWidth()).isEqualTo(logo.widthPx());
      assertThat(image.getHeight()).isEqualTo(logo.heightPx());
    }
  }

  /**
   * Its colours are for a printing press, and would break the card's promise of one colour space.
   */
  @Test
  void jpegInFourColoursIsRefused() throws Exception {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(jpeg)) {
      writer.setOutput(out);
      WritableRaster fourColours =
          Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 300, 120, 4, null);
      writer.write(null, new IIOImage(fourColours, null, null), null);
    }
    assertRefused(
        jpeg.toByteArray(), "is a JPEG file that cannot be decoded; save it anew as PNG in RGB");
  }

  @Test
  void kindIsToldByTheFirstBytesAndNotByTheName() throws Exception {
    byte[] content = Pictures.file("jpeg", 300, 120);
    Path file = Files.write(folder.resolve("logo.png"), content);
    assertThat(LogoFile.read(file).format()).isEqualTo(Logo.Format.JPEG);
  }

  @ParameterizedTest
  @CsvSource({"200, 200", "4000, 400", "60, 600"})
  void sensibleSizesAreTaken(int width, int height) throws Exception {
    Logo logo = LogoFile.read(file(Pictures.file("png", width, height)));
    assertThat(logo.widthPx()).isEqualTo(width);
    assertThat(logo.heightPx()).isEqualTo(height);
  }

  @ParameterizedTest
  @CsvSource({
    "199, 100, 'must have 200 to 4000 pixels on its longer side, not 199'",
    "100, 4001, 'must have 200 to 4000 pixels on its longer side, not 4001'",
    "1001, 100, 'may be at most 10 times as long as it is high, or as high as long'"
  })
  void otherSizesAreSaid(int width, int height, String complaint) throws Exception {
    assertRefused(Pictures.file("png", width, height), complaint);
  }

  @Test
  void otherFilesAreSaid() throws Exception {
    assertRefused(Pictures.file("gif", 300, 120), "must be a PNG or JPEG file");
    assertRefused(new byte[0], "must be a PNG or JPEG file");
    assertRefused("hello".getBytes(StandardCharsets.UTF_8), "must be a PNG or JPEG file");
  }

  @ParameterizedTest
  @EnumSource(Logo.Format.class)
  void damagedFileIsSaid(Logo.Format format) throws Exception {
    byte[] content = Pictures.file(format.name(), 300, 120);
    assertRefused(
        Arrays.copyOf(content, 30),
        "is a " + format + " file that cannot be decoded; save it anew as PNG in RGB");
  }

  @Test
  void fileThatIsNotThereIsSaid() {
    Path file = folder.resolve("none.png");
    assertThatThrownBy(() -> LogoFile.read(file))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("names a file that is not there: " + file);
    assertThatThrownBy(() -> LogoFile.read(folder)).hasMessageContaining("is not there");
  }

  @Test
  void fileOfTooManyBytesIsSaid() throws Exception {
    Path file = file(new byte[2_000_001]);
    assertThatThrownBy(() -> LogoFile.read(file))
        .hasMessage("may have at most 2 MB: save " + file + " with fewer pixels");
  }

  private void assertRefused(byte[] content, String complaint) throws Exception {
    Path file = file(content);
    assertThatThrownBy(() -> LogoFile.read(file))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(complaint + ": " + file);
  }

  private Path file(byte[] content) throws Exception {
    return Files.write(folder.resolve("logo"), content);
  }
}
