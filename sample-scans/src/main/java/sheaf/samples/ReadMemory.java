package sheaf.samples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sheaf.samples.scene.Behind;
import sheaf.scanner.SheetReader;

/**
 * How much memory reading a long PDF takes: {@code ReadMemory PAGES}. Prints what the process holds
 * resident, native memory included, every twentieth of the way; Linux only.
 */
public final class ReadMemory {

  private static final int STEPS = 20;

  private static final double KILO = 1024;

  private ReadMemory() {}

  /** Reads a PDF of so many pages, each a scan of 300 dpi. */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = Terminal.out();
    int pages = Integer.parseInt(arguments[0]);
    byte[] pdf =
        Stack.pdf(
            List.of(SpeedSheets.scan(Behind.BLACK, false), SpeedSheets.scan(Behind.BACKING, true)),
            pages);
    System.gc();
    out.printf("%d pages, %.0f MB; page, MB resident, MB of them heap%n", pages, mega(pdf.length));
    int[] read = new int[1];
    int[] holes = new int[1];
    new SheetReader()
        .read(
            "stack",
            pdf,
            SheetReader.Proof.SKIP,
            page -> {
              holes[0] += page.reading().holes().size();
              read[0]++;
              if (read[0] % Math.max(1, pages / STEPS) == 0) {
                out.printf("%5d  %5.0f  %5.0f%n", read[0], resident("VmRSS"), heap());
              }
            });
    out.printf("%d holes; peak %.0f MB resident%n", holes[0], resident("VmHWM"));
  }

  private static double heap() {
    return mega(Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
  }

  private static double mega(double bytes) {
    return bytes / KILO / KILO;
  }

  /** From proc(5), in kilobytes there. */
  private static double resident(String key) {
    try {
      return Files.readAllLines(Path.of("/proc/self/status")).stream()
          .filter(line -> line.startsWith(key + ":"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / KILO)
          .findFirst()
          .orElseThrow();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
