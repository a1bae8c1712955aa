package sheaf.samples.digit;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.SheetKind;
import sheaf.samples.CommittedSamples;
import sheaf.samples.Terminal;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

/**
 * What reading a filled-in bench card costs against reading a pair sheet, both scanned at 200 dpi,
 * by the processor's time and in turns; and how long the recogniser of digits takes to load.
 */
public final class CardCost {

  private static final double NANOSECONDS = 1e6;
  private static final int USUAL_ROUNDS = 30;

  private CardCost() {}

  /** Prints medians; an argument says how many rounds. */
  public static void main(String[] arguments) {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_ROUNDS;
    NativeLibraries.load();
    long before = processor();
    DigitReader.bundled();
    double loaded = (processor() - before) / NANOSECONDS;
    Terminal.out().printf("loading the recogniser: %.0f ms of processor time%n", loaded);
    SheetReader reader = new SheetReader();
    List<byte[]> files = new ArrayList<>();
    FilledCardSample.both().forEach(side -> files.add(side.file()));
    files.add(pair());
    double[][] times = new double[files.size()][rounds];
    for (int round = 0; round < rounds; round++) {
      for (int i = 0; i < files.size(); i++) {
        times[i][round] = read(reader, files.get(i));
      }
    }
    double front = middle(times[0]);
    double back = middle(times[1]);
    double pair = middle(times[2]);
    Terminal.out()
        .printf(
            "front %.0f ms, back %.0f ms, pair sheet %.0f ms: %.2f and %.2f times a pair sheet%n",
            front, back, pair, front / pair, back / pair);
  }

  private static byte[] pair() {
    return CommittedSamples.all().stream()
        .filter(
            sample ->
                SheetCode.parse(sample.truth().code())
                    .filter(code -> code.layout().kind() == SheetKind.PAIR)
                    .isPresent())
        .findFirst()
        .orElseThrow()
        .file();
  }

  private static double read(SheetReader reader, byte[] file) {
    long before = processor();
    List<ReadPage> pages = new ArrayList<>();
    reader.read("cost", file, SheetReader.Proof.SKIP, pages::add);
    return (processor() - before) / NANOSECONDS;
  }

  private static long processor() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  /** The median of the second half, when all is warm. */
  private static double middle(double[] times) {
    double[] warm = Arrays.copyOfRange(times, times.length / 2, times.length);
    Arrays.sort(warm);
    return warm[warm.length / 2];
  }
}
