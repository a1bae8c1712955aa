package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.scanner.SheetReader;

/** Stacks of scans in one PDF. */
class StackTest {

  /** Sheets 1 to 4 of one job. */
  private static final List<byte[]> JOB =
      CommittedSamples.all().stream().limit(4).map(CommittedSamples.CommittedSample::file).toList();

  @TempDir Path folder;

  /** Reads a stack and prints a line for each page; a program of its own. */
  static final class Reading {
    private Reading() {}

    public static void main(String[] arguments) throws IOException {
      read(Files.readAllBytes(Path.of(arguments[0]))).forEach(System.out::println);
    }
  }

  private static List<String> read(byte[] pdf) {
    List<String> lines = new ArrayList<>();
    new SheetReader()
        .read("stack", pdf, SheetReader.Proof.SKIP, page -> lines.add(line(page.reading())));
    return lines;
  }

  private static String line(PageReading page) {
    return page.state() == ReadingState.REFUSED
        ? page.source() + " refused"
        : page.source() + " sheet " + page.sheet().orElseThrow().number();
  }

  private static List<String> sheets(int pages) {
    return IntStream.range(0, pages)
        .mapToObj(i -> "stack#" + (i + 1) + " sheet " + (i % JOB.size() + 1))
        .toList();
  }

  @Test
  @Tag("slow")
  void aPageThatFailsDoesNotLoseTheOthers() throws IOException {
    byte[] pdf;
    try (PDDocument document = Loader.loadPDF(Stack.pdf(JOB, 6))) {
      document.getPage(1).setResources(new PDPage().getResources());
      document.getPage(4).getCOSObject().removeItem(org.apache.pdfbox.cos.COSName.CONTENTS);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      pdf = out.toByteArray();
    }
    List<String> expected = new ArrayList<>(sheets(6));
    expected.set(1, "stack#2 refused");
    expected.set(4, "stack#5 refused");

    assertThat(read(pdf)).isEqualTo(expected);
  }

  @Test
  @Tag("slow")
  void sixtyPagesAreReadInOrderWithLittleMemory() throws Exception {
    Path pdf = Files.write(folder.resolve("stack.pdf"), Stack.pdf(JOB, 60));
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx96m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Reading.class.getName(),
                pdf.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(program.waitFor()).as(said).isZero();
    assertThat(said.lines().toList()).isEqualTo(sheets(60));
  }
}
