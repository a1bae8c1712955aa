package sheaf.desk.intake;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import sheaf.desk.file.OutputFile;

/** The folder that proof pictures go to, each named after its page. */
public final class ProofFolder {

  private final Path folder;
  private final Set<String> used = new HashSet<>();

  /** Makes the folder unless it is there. */
  public ProofFolder(Path folder) {
    this.folder = OutputFile.folder(folder);
  }

  /** The folder. */
  public Path path() {
    return folder;
  }

  /**
   * Writes a page's picture.
   *
   * @param source the page: {@code scans/bow.pdf#3} becomes {@code bow.pdf-3.proof.jpg}
   * @param jpeg the picture
   */
  void write(String source, byte[] jpeg) {
    OutputFile.write(folder.resolve(name(source)), out -> out.write(jpeg));
  }

  private String name(String source) {
    String file = source.substring(Math.max(source.lastIndexOf('/'), source.lastIndexOf('\\')) + 1);
    String plain = file.replace('#', '-').replaceAll("[^\\p{L}\\p{N}._-]", "_");
    String name = plain + ".proof.jpg";
    // Files of one name from several folders must not overwrite each other's pictures.
    for (int i = 2; !used.add(name); i++) {
      name = plain + "~" + i + ".proof.jpg";
    }
    return name;
  }
}
