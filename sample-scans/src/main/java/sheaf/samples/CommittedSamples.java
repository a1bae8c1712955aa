package sheaf.samples;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import sheaf.samples.scene.Truth;
import sheaf.samples.scene.TruthFile;

/** The sample scans that come with Sheaf, and what they were made with. */
public final class CommittedSamples {

  private static final String FOLDER = "scans/";

  private CommittedSamples() {}

  /**
   * A sample.
   *
   * @param name of its file
   * @param file its content
   * @param truth what it was made with, and how reading it should end
   */
  public record CommittedSample(String name, byte[] file, Truth truth) {}

  /** Every sample, those of one job first and in the order of their sheets. */
  public static List<CommittedSample> all() {
    return SampleList.all().stream().map(entry -> load(entry.name())).toList();
  }

  /** The file with a sample's truth. */
  static String truthName(String name) {
    return name.substring(0, name.lastIndexOf('.')) + ".json";
  }

  private static CommittedSample load(String name) {
    String truth = new String(bytes(truthName(name)), StandardCharsets.UTF_8);
    return new CommittedSample(name, bytes(name), TruthFile.read(truth));
  }

  private static byte[] bytes(String name) {
    try (InputStream in = CommittedSamples.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new FileNotFoundException("no sample " + name + " on the class path");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
