package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class ScanFileTest {

  private static final BufferedImage PICTURE =
      new BufferedImage(40, 30, BufferedImage.TYPE_3BYTE_BGR);

  /** Place of a marker's or chunk's name in a file, counted in bytes. */
  private static int find(byte[] file, String name) {
    return new String(file, StandardCharsets.ISO_8859_1).indexOf(name);
  }

  @Test
  void aJpegScanStatesItsResolutionInItsJfifHeader() {
    byte[] file = ScanFile.jpeg(PICTURE, 80, 240);
    // JFIF 1.02: after "JFIF", a zero and two bytes of version come unit (1: inch) and densities.
    int jfif = find(file, "JFIF");
    assertThat(file[jfif + 7]).isEqualTo((byte) 1);
    assertThat(ByteBuffer.wrap(file).getShort(jfif + 8)).isEqualTo((short) 240);
    assertThat(ByteBuffer.wrap(file).getShort(jfif + 10)).isEqualTo((short) 240);
  }

  @Test
  void aJpegScanCanLeaveItsResolutionOut() {
    byte[] file = ScanFile.jpeg(PICTURE, 80, 0);
    assertThat(file[find(file, "JFIF") + 7]).isZero();
  }

  @Test
  void aPngScanStatesItsResolutionPerMetre() throws IOException {
    byte[] file = ScanFile.png(new BufferedImage(40, 30, BufferedImage.TYPE_BYTE_GRAY), 300);
    int chunk = find(file, "pHYs");
    // The PNG specification's own example: 300 dpi are 11811 pixels a metre, rounded.
    assertThat(ByteBuffer.wrap(file).getInt(chunk + 4)).isEqualTo(11811);
    assertThat(file[chunk + 12]).isEqualTo((byte) 1);
    assertThat(ImageIO.read(new ByteArrayInputStream(file)).getWidth()).isEqualTo(40);
  }

  @Test
  void aPhotoHasExifWithItsOrientationAndExposureAndNoJfif() throws IOException {
    byte[] file = ScanFile.photo(PICTURE, 85, 6);
    ByteBuffer bytes = ByteBuffer.wrap(file);
    assertThat(bytes.getShort(2)).isEqualTo((short) 0xFFE1);
    assertThat(find(file, "JFIF")).isEqualTo(-1);
    int tiff = find(file, "Exif") + 6;
    int entry = tiff + bytes.getInt(tiff + 4) + 2;
    assertThat(bytes.getShort(entry)).isEqualTo((short) 0x0112);
    assertThat(bytes.getShort(entry + 8)).isEqualTo((short) 6);
    int exif = tiff + bytes.getInt(entry + 12 + 8) + 2;
    assertThat(bytes.getShort(exif)).isEqualTo((short) 0x829A);
    assertThat(ImageIO.read(new ByteArrayInputStream(file)).getHeight()).isEqualTo(30);
  }
}
