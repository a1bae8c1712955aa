package sheaf.samples.rim;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.function.LongFunction;
import java.util.stream.Stream;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.NumberJudge;
import sheaf.samples.FlatbedMix;
import sheaf.samples.PhotoMix;
import sheaf.samples.Sample;
import sheaf.samples.Workers;
import sheaf.samples.scene.Shot;
import sheaf.samples.scene.Truth;
import sheaf.scanner.field.FieldReader;
import sheaf.scanner.hole.ArrowsShot;
import sheaf.scanner.hole.RimSurvey;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.FlatSheet;
import sheaf.scanner.sheet.SheetInPicture;

/**
 * Measures the scanner's {@code rim-odds.csv}: {@code RimStudy SCANS PHOTOS FILE} surveys the made
 * scans of seeds 1 to SCANS and the made photos of seeds 1 to PHOTOS. Accuracy must be reported on
 * other seeds.
 */
public final class RimStudy {

  /** A place belongs to a hole whose axis is nearer than this, in millimetres. */
  private static final double SAME = 4.5;

  /** Places nearer to a hole than this are no examples of places without one, in millimetres. */
  private static final double APART = 7;

  /** A place without a hole weighs as much as so many with one: they are rarer. */
  private static final int NONE_WEIGHT = 3;

  private RimStudy() {}

  /** Runs the study. */
  public static void main(String[] arguments)
      throws IOException, InterruptedException, ExecutionException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException("usage: RimStudy SCANS PHOTOS FILE");
    }
    NativeLibraries.load();
    List<SurveyedHole> holes = new ArrayList<>();
    holes.addAll(survey(Long.parseLong(arguments[0]), FlatbedMix::make));
    holes.addAll(survey(Long.parseLong(arguments[1]), PhotoMix::make));
    try (PrintStream out =
        new PrintStream(
            Files.newOutputStream(Path.of(arguments[2])), false, StandardCharsets.US_ASCII)) {
      out.printf(
          "# Measured on made holes by: java -cp desk/target/sheaf.jar %s %s %s FILE%n",
          RimStudy.class.getName(), arguments[0], arguments[1]);
      out.println("kind,feature,where,whether");
      holes.stream()
          .map(SurveyedHole::kind)
          .distinct()
          .sorted()
          .forEach(kind -> fit(kind, holes, out));
    }
  }

  private static List<SurveyedHole> survey(long seeds, LongFunction<Sample> maker)
      throws InterruptedException, ExecutionException {
    int threads = Runtime.getRuntime().availableProcessors();
    return Workers.each(1, seeds, threads, seed -> survey(maker.apply(seed), new Random(seed)))
        .stream()
        .flatMap(List::stream)
        .toList();
  }

  private static List<SurveyedHole> survey(Sample sample, Random random) {
    Truth truth = sample.truth();
    double radius = truth.shaft() / (truth.scaleX() + truth.scaleY()) * FlatSheet.PIXELS_PER_MM;
    try (PictureFile file = PictureFile.open(sample.file());
        Picture picture = file.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      ArrowsShot shot =
          ArrowsShot.of(
              FieldReader.measure(sheet.flat(), sheet.layout(), NumberJudge.USUALLY_SURE)
                  .read(List.of())
                  .readings(),
              sheet.layout());
      RimSurvey survey = RimSurvey.of(sheet.flat(), sheet.layout(), shot, radius);
      List<SurveyedHole> holes = new ArrayList<>();
      for (RimSurvey.Place place : survey.places()) {
        MmPoint axis = nearest(place, truth);
        double off = axis.distanceTo(place.middle());
        if (off < SAME) {
          holes.add(SurveyedHole.hole(survey.kind(), place, axis, radius, random));
        } else if (off > APART) {
          holes.add(SurveyedHole.none(survey.kind(), place, radius));
        }
      }
      return holes;
    } catch (UnreadableException e) {
      return List.of();
    }
  }

  private static MmPoint nearest(RimSurvey.Place place, Truth truth) {
    return truth.shots().stream()
        .map(Shot::axis)
        .min(Comparator.comparingDouble(axis -> axis.distanceTo(place.middle())))
        .orElseThrow();
  }

  private static void fit(String kind, List<SurveyedHole> all, PrintStream out) {
    List<SurveyedHole> holes = all.stream().filter(hole -> hole.kind().equals(kind)).toList();
    double[] where =
        Logit.fit(holes.stream().map(SurveyedHole::choice).flatMap(Optional::stream).toList());
    float[] weights = new float[where.length];
    for (int i = 0; i < where.length; i++) {
      weights[i] = (float) where[i];
    }
    double[] whether = Logit.fit(holes.stream().flatMap(hole -> isHole(hole, weights)).toList());
    List<String> names = new ArrayList<>(RimSurvey.names());
    names.addAll(List.of("open", "constant"));
    for (int i = 0; i < names.size(); i++) {
      double w = i < where.length ? where[i] : 0;
      out.printf(Locale.ROOT, "%s,%s,%.4g,%.4g%n", kind, names.get(i), w, whether[i]);
    }
  }

  /** The choice between a hole and none. */
  private static Stream<Logit.Choice> isHole(SurveyedHole hole, float[] where) {
    float[] features = hole.likeliest(where);
    boolean is = hole.choice().isPresent();
    Logit.Choice choice =
        new Logit.Choice(
            new float[][] {features, new float[features.length]},
            is ? new float[] {1, 0} : new float[] {0, 1});
    return Stream.generate(() -> choice).limit(is ? 1 : NONE_WEIGHT);
  }
}
