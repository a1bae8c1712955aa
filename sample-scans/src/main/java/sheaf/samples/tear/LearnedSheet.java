package sheaf.samples.tear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sheaf.samples.scene.TearShot;
import sheaf.samples.scene.Truth;
import sheaf.samples.scene.TruthFile;
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

  /** Copies the list. */
  LearnedSheet {
    tears = List.copyOf(tears);
  }

  /** Reads one of a folder's pictures; empty where it cannot be flattened. */
  static Optional<LearnedSheet> read(Path file) throws IOException {
    Path json = file.resolveSibling(file.getFileName().toString().replace(".jpg", ".json"));
    Truth truth = TruthFile.read(Files.readString(json));
    try (PictureFile pictures = PictureFile.open(Files.readAllBytes(file));
        Picture picture = pictures.page(0);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      return Optional.of(
          new LearnedSheet(TearPicture.of(sheet.flat(), sheet.layout()), truth.tears()));
    } catch (UnreadableException e) {
      // A picture that cannot be read teaches nothing.
      return Optional.empty();
    }
  }
}
