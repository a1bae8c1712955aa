package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReasonCode;
import sheaf.desk.json.PageJson;
import sheaf.scanner.SheetReader;

/** Files that no sheet can be read from, with the real reader: each is a result with its reason. */
class BadInputTest {

  @TempDir Path folder;

  @Test
  void emptyFileIsRefused() throws Exception {
    assertRefused(new byte[0], ReasonCode.EMPTY_FILE);
  }

  @Test
  void pageOfTheWebNamedLikeAPictureIsRefused() throws Exception {
    assertRefused(
        "<html><script>alert(1)</script></html>".getBytes(StandardCharsets.UTF_8),
        ReasonCode.NOT_A_PICTURE);
  }

  /** OWASP's application security standard asks for this: judged by the header, not decoded. */
  @Test
  void floodOfPixelsIsRefusedByItsHeader() throws Exception {
    assertRefused(pngHeader(60_000, 60_000), ReasonCode.TOO_LARGE);
  }

  @Test
  void printedSheetThatWasNeverScannedIsRefused() throws Exception {
    Path pdf = folder.resolve("pair.pdf");
    CommandRun.of(folder, "print", "pair", "-o", pdf.toString());
    assertRefused(Files.readAllBytes(pdf), ReasonCode.PDF_WITHOUT_PICTURE);
  }

  private void assertRefused(byte[] content, ReasonCode why) throws Exception {
    Path file = Files.write(folder.resolve("scan.jpg"), content);
    CommandRun run =
        CommandRun.of(
            folder.resolve("home"), new SheetReader()::read, "read", "--json", file.toString());
    assertThat(run.status()).isEqualTo(4);
    assertThat(run.err()).isEmpty();
    assertThat(run.lines()).hasSize(1);
    PageReading page = PageJson.parse(run.lines().get(0));
    assertThat(page.reasons()).extracting(reason -> reason.code()).containsExactly(why);
    assertThat(page.reasons().get(0).message()).isNotBlank();
  }

  private static byte[] pngHeader(int width, int height) throws IOException {
    ByteArrayOutputStream header = new ByteArrayOutputStream();
    DataOutputStream chunk = new DataOutputStream(header);
    chunk.writeBytes("IHDR");
    chunk.writeInt(width);
    chunk.writeInt(height);
    chunk.write(new byte[] {8, 0, 0, 0, 0});
    CRC32 check = new CRC32();
    check.update(header.toByteArray());
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(png);
    out.writeLong(0x89504E470D0A1A0AL);
    out.writeInt(13);
    out.write(header.toByteArray());
    out.writeInt((int) check.getValue());
    return png.toByteArray();
  }
}
