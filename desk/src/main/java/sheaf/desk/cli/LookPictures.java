package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.answer.Question;
import sheaf.core.job.JobId;
import sheaf.core.page.MmRect;
import sheaf.desk.file.OutputFile;
import sheaf.desk.intake.PlaceSource;
import sheaf.desk.store.KeptReading;
import sheaf.desk.store.Store;

/** Writes a picture of what each question is about, cut out of the scan that counts. */
final class LookPictures {

  /** A place on a sheet. */
  private record Place(int sheet, MmRect rect) {}

  private final Map<Place, Path> written = new HashMap<>();

  private LookPictures() {}

  /** Writes them all; questions about sheets whose scan is gone get none. */
  static LookPictures write(
      List<Question> questions, JobId job, Store store, PlaceSource source, Path folder) {
    LookPictures pictures = new LookPictures();
    Map<Integer, List<MmRect>> places = new HashMap<>();
    for (Question question : questions) {
      question
          .look()
          .ifPresent(
              rect -> places.computeIfAbsent(question.sheet(), any -> new ArrayList<>()).add(rect));
    }
    if (!places.isEmpty()) {
      OutputFile.folder(folder);
    }
    List<KeptReading> readings = store.everyReading(job);
    places.forEach(
        (sheet, rects) ->
            last(readings, sheet)
                .ifPresent(kept -> pictures.write(sheet, rects, kept, store, source, folder)));
    return pictures;
  }

  private static Optional<KeptReading> last(List<KeptReading> readings, int sheet) {
    return readings.stream()
        .filter(
            kept -> kept.read().page().sheet().filter(code -> code.number() == sheet).isPresent())
        .reduce((earlier, later) -> later);
  }

  private void write(
      int sheet,
      List<MmRect> rects,
      KeptReading kept,
      Store store,
      PlaceSource source,
      Path folder) {
    List<byte[]> pictures =
        store
            .original(kept.original())
            .map(content -> source.pictures(content, kept.number(), rects))
            .orElse(List.of());
    for (int i = 0; i < pictures.size(); i++) {
      Path file = folder.resolve("sheet-%d-%02d.png".formatted(sheet, i + 1));
      byte[] png = pictures.get(i);
      OutputFile.write(file, out -> out.write(png));
      written.put(new Place(sheet, rects.get(i)), file);
    }
  }

  /** The picture for a question; empty when there is none. */
  Optional<Path> of(Question question) {
    return question.look().map(rect -> written.get(new Place(question.sheet(), rect)));
  }
}
