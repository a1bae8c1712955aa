package sheaf.samples.tear;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheaf.samples.scene.Truth;
import sheaf.samples.scene.TruthFile;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.SheetInPicture;
import sheaf.scanner.tear.TearSurvey;

/**
 * Measures the reader's {@code tear-odds.csv}: {@code TearStudy CSV FOLDER...}, where the folders
 * hold pictures of tear sheets and their truths.
 */
public final class TearStudy {

  /** Share of the cells that counts as met for each sort, so that none is impossible. */
  private static final double FLOOR = 0.0005;

  private final Map<String, long[]> torn = new TreeMap<>();
  private final Map<String, long[]> plain = new TreeMap<>();

  private TearStudy() {}

  /** Measures over the folders and writes the table. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length < 2) {
      throw new IllegalArgumentException("usage: TearStudy CSV FOLDER...");
    }
    NativeLibraries.load();
    TearStudy study = new TearStudy();
    for (String folder : List.of(arguments).subList(1, arguments.length)) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        for (Path file : files.filter(path -> path.toString().endsWith(".jpg")).sorted().toList()) {
          study.add(file);
        }
      }
    }
    Files.writeString(Path.of(arguments[0]), study.table(), StandardCharsets.US_ASCII);
  }

  private void add(Path file) throws IOException {
    Path json = file.resolveSibling(file.getFileName().toString().replace(".jpg", ".json"));
    Truth truth = TruthFile.read(Files.readString(json));
    try (PictureFile pictures = PictureFile.open(Files.readAllBytes(file));
        Picture picture = pictures.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      double radius = truth.shaft() / (truth.scaleX() + truth.scaleY());
      List<TearSurvey.Known> known =
          truth.tears().stream()
              .map(tear -> new TearSurvey.Known(tear.point(), tear.tail(), radius))
              .toList();
      TearSurvey survey = TearSurvey.of(sheet.flat(), sheet.layout(), known);
      add(survey.torn(), torn.computeIfAbsent(survey.kind(), k -> new long[survey.torn().length]));
      add(survey.plain(), plain.computeIfAbsent(survey.kind(), k -> new long[TearSurvey.SORTS]));
    } catch (UnreadableException e) {
      // A picture that cannot be read teaches nothing.
      return;
    }
  }

  private static void add(long[] counts, long[] sums) {
    for (int i = 0; i < counts.length; i++) {
      sums[i] += counts[i];
    }
  }

  private String table() {
    StringBuilder table = new StringBuilder();
    table.append("# seen,part,ring,log odds of each sort; made by sheaf.samples.tear.TearStudy\n");
    for (String kind : torn.keySet()) {
      for (int row = 0; row < TearSurvey.PARTS * TearSurvey.RINGS; row++) {
        int first = row * TearSurvey.SORTS;
        long[] counts = Arrays.copyOfRange(torn.get(kind), first, first + TearSurvey.SORTS);
        String line =
            IntStream.range(0, TearSurvey.SORTS)
                .mapToObj(sort -> odds(counts, plain.get(kind), sort))
                .collect(Collectors.joining(","));
        String part = TearSurvey.part(row / TearSurvey.RINGS);
        table.append("%s,%s,%d,%s%n".formatted(kind, part, row % TearSurvey.RINGS, line));
      }
    }
    return table.toString();
  }

  private static String odds(long[] torn, long[] plain, int sort) {
    return String.format(Locale.ROOT, "%.2f", Math.log(share(torn, sort) / share(plain, sort)));
  }

  private static double share(long[] counts, int sort) {
    double all = Math.max(1, Arrays.stream(counts).sum());
    return (counts[sort] / all + FLOOR) / (1 + FLOOR * counts.length);
  }
}
