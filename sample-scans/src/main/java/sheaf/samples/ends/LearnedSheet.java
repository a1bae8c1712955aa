package sheaf.samples.ends;

import java.util.List;
import java.util.Optional;
import sheaf.samples.Sample;
import sheaf.samples.TearMix;
import sheaf.samples.scene.TearShot;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.SheetInPicture;
import sheaf.scanner.tear.TearPicture;

/**
 * A made tear sheet to learn from.
 *
 * @param picture of its target
 * @param tears that are on it
 */
record LearnedSheet(TearPicture picture, List<TearShot> tears) {

  /** Of so many sheets one is photographed, and one is as they come, with zones left free. */
  private static final int SORTS = 5;

  /** Copies the list. */
  LearnedSheet {
    tears = List.copyOf(tears);
  }

  /** Makes the sheet of a seed; empty where it cannot be flattened. */
  static Optional<LearnedSheet> make(long seed) {
    int sort = (int) (seed % SORTS);
    Sample sample =
        sort == 0
            ? TearMix.photo(seed)
            : sort == 1 ? TearMix.make(seed) : TearMix.toLearnFrom(seed);
    try (PictureFile pictures = PictureFile.open(sample.file());
        Picture picture = pictures.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      return Optional.of(
          new LearnedSheet(TearPicture.of(sheet.flat(), sheet.layout()), sample.truth().tears()));
    } catch (UnreadableException e) {
      // A picture that cannot be read teaches nothing.
      return Optional.empty();
    }
  }
}
