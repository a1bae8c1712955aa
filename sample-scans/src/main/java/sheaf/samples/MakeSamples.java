package sheaf.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import sheaf.samples.scene.TruthFile;

/** Makes the committed samples anew: {@code MakeSamples DIR}. */
public final class MakeSamples {

  private MakeSamples() {}

  /** Writes every sample, and its truth beside it, into the folder that is the one argument. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("usage: MakeSamples DIR");
    }
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    for (SampleList.Entry entry : SampleList.all()) {
      Sample sample = entry.maker().get();
      Files.write(folder.resolve(entry.name()), sample.file());
      Files.writeString(
          folder.resolve(CommittedSamples.truthName(entry.name())),
          TruthFile.write(sample.truth()));
    }
  }
}
