package sheaf.desk.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files made by the Java platform (JPEG, PNG, TIFF) and by PDFBox, whole and cut. */
class FileEndTest {

  private static final List<byte[]> WHOLE =
      List.of(picture("jpg"), picture("png"), tiff(1), tiff(3), pdf(1), pdf(4));

  @Test
  void whatLibrariesWriteIsComplete() {
    assertThat(WHOLE).allSatisfy(file -> assertThat(FileEnd.of(file)).isEqualTo(FileEnd.COMPLETE));
  }

  /** Wherever the writing stops, there is something missing. */
  @Property(tries = 300)
  void cutFileIsUnfinished(
      @ForAll @IntRange(min = 0, max = 5) int which,
      @ForAll @IntRange(min = 0, max = 9999) int tenThousandths) {
    byte[] whole = WHOLE.get(which);
    // Of the last bytes, some say nothing: a line end.
    int length = (int) (whole.length * (tenThousandths / 10_000.0));
    byte[] cut = Arrays.copyOf(whole, Math.min(length, whole.length - 3));
    assertThat(FileEnd.of(cut)).isEqualTo(FileEnd.UNFINISHED);
  }

  /** Some programs reserve all of the room at first; only the last byte tells. */
  @Property(tries = 100)
  void fileThatIsFilledInPlaceIsNotCompleteBefore(
      @ForAll @IntRange(min = 0, max = 5) int which,
      @ForAll @DoubleRange(min = 0, max = 0.5) double share) {
    byte[] whole = WHOLE.get(which);
    byte[] filled = Arrays.copyOf(Arrays.copyOf(whole, (int) (whole.length * share)), whole.length);
    boolean isTiff = which == 2 || which == 3;
    // A TIFF file's pages may lie before their directory, or behind it, and then look whole.
    if (!isTiff) {
      assertThat(FileEnd.of(filled)).isIn(FileEnd.UNFINISHED, FileEnd.FOLLOWED);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4})
  void whatFollowsTheEndMayBeTheBeginningOfMore(int which) {
    byte[] whole = WHOLE.get(which);
    byte[] more = Arrays.copyOf(whole, whole.length + 5);
    Arrays.fill(more, whole.length, more.length, (byte) 'x');
    assertThat(FileEnd.of(more)).isEqualTo(FileEnd.FOLLOWED);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4})
  void blanksBehindTheEndAreNothing(int which) {
    byte[] whole = WHOLE.get(which);
    assertThat(FileEnd.of(Arrays.copyOf(whole, whole.length + 512))).isEqualTo(FileEnd.COMPLETE);
  }

  @Test
  void emptyFileIsUnfinished() {
    assertThat(FileEnd.of(new byte[0])).isEqualTo(FileEnd.UNFINISHED);
    assertThat(FileEnd.of(new byte[100_000])).isEqualTo(FileEnd.UNFINISHED);
  }

  @Test
  void textIsNoScan() {
    assertThat(FileEnd.of("shopping list: nothing".getBytes())).isEqualTo(FileEnd.NO_SCAN);
  }

  /** A picture inside a JPEG file, such as a camera's small one, has an end of its own. */
  @Test
  void endOfASmallPictureInsideIsNotTheEnd() {
    byte[] whole = WHOLE.get(0);
    byte[] small = {
      (byte) 0xFF, (byte) 0xE1, 0, 8, (byte) 0xFF, (byte) 0xD8, 1, 2, (byte) 0xFF, (byte) 0xD9
    };
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(whole, 0, 2);
    file.writeBytes(small);
    file.write(whole, 2, whole.length / 2);
    assertThat(FileEnd.of(file.toByteArray())).isEqualTo(FileEnd.UNFINISHED);
  }

  /** Rubbish behind a good beginning ends in some answer, never in a fault. */
  @Property(tries = 300)
  void rubbishIsJudgedToo(@ForAll @IntRange(min = 0, max = 5) int which, @ForAll long seed) {
    byte[] file = WHOLE.get(which).clone();
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      file[8 + random.nextInt(file.length - 8)] = (byte) random.nextInt();
    }
    assertThat(FileEnd.of(file)).isNotNull();
  }

  private static BufferedImage noise(int seed) {
    BufferedImage image = new BufferedImage(120, 90, BufferedImage.TYPE_BYTE_GRAY);
    Random random = new Random(seed);
    for (int i = 0; i < 120 * 90; i++) {
      image.getRaster().setSample(i % 120, i / 120, 0, random.nextInt(256));
    }
    return image;
  }

  private static byte[] picture(String format) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(noise(1), format, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] tiff(int pages) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(to);
      writer.prepareWriteSequence(null);
      for (int i = 0; i < pages; i++) {
        writer.writeToSequence(new IIOImage(noise(i), null, null), null);
      }
      writer.endWriteSequence();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] pdf(int pages) {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      for (int i = 0; i < pages; i++) {
        document.addPage(new PDPage());
      }
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
