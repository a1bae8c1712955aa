package sheaf.scanner.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.ReasonCode;

class PictureFileTest {

  @Test
  void anEmptyFileIsCalledEmpty() {
    refused(new byte[0], ReasonCode.EMPTY_FILE);
  }

  @Test
  void textNamedLikeAPictureIsNoPicture() {
    refused("hello, I am no picture".getBytes(StandardCharsets.UTF_8), ReasonCode.NOT_A_PICTURE);
  }

  @Test
  void aHeifPhotoIsRefusedWithWhatToSetOnThePhone() {
    // A file type box as ISO/IEC 14496-12 (4.3) and 23008-12 (10.2.1) lay it out.
    byte[] start = "\0\0\0\030ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);

    assertThatThrownBy(() -> PictureFile.open(start))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> {
              assertThat(refused.reason().code()).isEqualTo(ReasonCode.NOT_A_PICTURE);
              assertThat(refused.reason().message()).contains("camera to save JPEG");
            });
  }

  @Test
  void aJpegThatBreaksOffIsDamaged() throws IOException {
    byte[] whole = file("jpeg");

    refused(Arrays.copyOf(whole, whole.length * 2 / 3), ReasonCode.DAMAGED_FILE);
    refused(Arrays.copyOf(whole, 20), ReasonCode.DAMAGED_FILE);
  }

  @Test
  void aPngThatBreaksOffIsDamaged() throws IOException {
    byte[] whole = file("png");

    refused(Arrays.copyOf(whole, whole.length - 20), ReasonCode.DAMAGED_FILE);
  }

  @Test
  void aTiffOfRubbishIsDamaged() {
    byte[] rubbish = new byte[200];
    rubbish[0] = 'I';
    rubbish[1] = 'I';
    rubbish[2] = 42;

    refusedPage(rubbish, ReasonCode.DAMAGED_FILE);
  }

  @Test
  void aHeaderOf60000By60000PixelsIsRefusedBeforeAnyMemoryIsTaken() throws IOException {
    byte[] bomb = file("png");
    // Width and height stand at bytes 16 and 20 of a PNG (W3C PNG specification, IHDR).
    ByteBuffer.wrap(bomb).putInt(16, 60_000).putInt(20, 60_000);

    refused(bomb, ReasonCode.TOO_LARGE);
  }

  @Test
  void aPdfWithoutAPictureSaysSo() throws IOException {
    byte[] pdf = pdf(document -> document.addPage(new PDPage(PDRectangle.LETTER)));

    refusedPage(pdf, ReasonCode.PDF_WITHOUT_PICTURE);
  }

  @Test
  void aPdfThatAsksForAPasswordSaysSo() throws IOException {
    byte[] pdf =
        pdf(
            document -> {
              document.addPage(new PDPage());
              document.protect(
                  new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            });

    refused(pdf, ReasonCode.ENCRYPTED_PDF);
  }

  @Test
  void aDamagedPdfSaysSo() {
    refused(
        "%PDF-1.7 and then nothing".getBytes(StandardCharsets.US_ASCII), ReasonCode.DAMAGED_FILE);
  }

  @Test
  void aPdfGivesTheEmbeddedScanItselfAndItsResolution() throws Exception {
    byte[] pdf =
        pdf(
            document -> {
              PDPage page = new PDPage(PDRectangle.LETTER);
              document.addPage(page);
              PDImageXObject scan =
                  JPEGFactory.createFromImage(
                      document, new BufferedImage(850, 1100, BufferedImage.TYPE_BYTE_GRAY));
              try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.drawImage(scan, 0, 0, 612, 792);
              }
            });

    try (PictureFile opened = PictureFile.open(pdf);
        Picture picture = opened.page(0)) {
      assertThat(picture.pixels().cols()).isEqualTo(850);
      assertThat(picture.pixels().rows()).isEqualTo(1100);
      assertThat(picture.isColour()).isFalse();
      assertThat(picture.stated().orElseThrow().across()).isCloseTo(100 / 25.4, within(1e-6));
    }
  }

  @Test
  void aTiffGivesItsPagesOneByOne() throws Exception {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
      writer.setOutput(out);
      writer.prepareWriteSequence(null);
      for (int width : new int[] {300, 400, 500}) {
        BufferedImage page = new BufferedImage(width, 200, BufferedImage.TYPE_BYTE_GRAY);
        writer.writeToSequence(new IIOImage(page, null, null), null);
      }
      writer.endWriteSequence();
    }

    try (PictureFile opened = PictureFile.open(file.toByteArray())) {
      assertThat(opened.pages()).isEqualTo(3);
      try (Picture last = opened.page(2)) {
        assertThat(last.pixels().cols()).isEqualTo(500);
      }
    }
  }

  private static byte[] file(String format) throws IOException {
    BufferedImage image = new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR);
    for (int i = 0; i < 320; i++) {
      image.setRGB(i, i % 240, 0xFFFFFF - i * 700);
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    ImageIO.write(image, format, file);
    return file.toByteArray();
  }

  private interface Filling {
    void fill(PDDocument document) throws IOException;
  }

  private static byte[] pdf(Filling filling) throws IOException {
    try (PDDocument document = new PDDocument()) {
      filling.fill(document);
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      document.save(file);
      return file.toByteArray();
    }
  }

  private static void refused(byte[] file, ReasonCode code) {
    assertThatThrownBy(() -> PictureFile.open(file).close())
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> assertThat(refused.reason().code()).isEqualTo(code));
  }

  private static void refusedPage(byte[] file, ReasonCode code) {
    assertThatThrownBy(
            () -> {
              try (PictureFile opened = PictureFile.open(file)) {
                opened.page(0).close();
              }
            })
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> assertThat(refused.reason().code()).isEqualTo(code));
  }
}
