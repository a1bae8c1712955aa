package sheaf.desk;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.zip.CRC32;
import sheaf.core.job.JobId;
import sheaf.core.reading.PageReading;
import sheaf.desk.intake.PageSource;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader.Proof;

/**
 * Small files that are complete PNG files by their structure and name the sheets that they show,
 * and a reader of them: so that what becomes of files can be tested without pictures.
 */
public final class Scanned implements PageSource {

  /** For sheets of {@link Pages#JOB}. */
  public static final Scanned READER = new Scanned();

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  /** A file that shows some sheets; number 0 is a page that cannot be read. */
  public static byte[] sheets(int... numbers) {
    StringBuilder text = new StringBuilder();
    for (int number : numbers) {
      text.append(number).append(' ');
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(SIGNATURE);
    chunk("IHDR", new byte[13], file);
    chunk("tEXt", text.toString().strip().getBytes(StandardCharsets.US_ASCII), file);
    chunk("IEND", new byte[0], file);
    return file.toByteArray();
  }

  private static void chunk(String name, byte[] data, ByteArrayOutputStream file) {
    byte[] letters = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(letters);
    sum.update(data);
    file.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    file.writeBytes(letters);
    file.writeBytes(data);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
  }

  private static List<Integer> numbers(byte[] file) {
    int at = SIGNATURE.length + 12 + 13;
    int length = ByteBuffer.wrap(file).getInt(at);
    String text = new String(file, at + 8, length, StandardCharsets.US_ASCII);
    return List.of(text.split(" ")).stream().map(Integer::valueOf).toList();
  }

  /** What a sheet of some number says. */
  public static PageReading page(JobId job, int number) {
    return number == 0 ? Pages.refused() : Pages.pair(job, number, number % 50, 5);
  }

  /** What a whole file says. */
  public static List<PageReading> pages(String name, byte[] file) {
    List<PageReading> pages = new ArrayList<>();
    READER.read(name, file, Proof.SKIP, page -> pages.add(page.reading()));
    return pages;
  }

  @Override
  public void read(String name, byte[] file, Proof proof, Consumer<ReadPage> pages) {
    List<Integer> numbers = numbers(file);
    for (int i = 0; i < numbers.size(); i++) {
      String source = numbers.size() == 1 ? name : name + "#" + (i + 1);
      pages.accept(new ReadPage(page(Pages.JOB, numbers.get(i)).from(source), Optional.empty()));
    }
  }
}
