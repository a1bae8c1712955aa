package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import sheaf.core.page.Paper;
import sheaf.desk.file.OutputFile;
import sheaf.desk.profile.ShopProfile;

/** The options of every command that prints: onto which paper, and where the PDF goes. */
final class PdfOptions {

  @Option(
      names = "--paper",
      paramLabel = "letter|a4|tabloid|a3",
      converter = Choices.OfPaper.class,
      completionCandidates = Choices.OfPaper.class,
      description = "Default: what the shop profile says. Cards come on letter and a4 only.")
  private Paper paper;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      required = true,
      description = "The PDF to write; - for standard output.")
  private Path output;

  /** The paper, when the command line says it. */
  Optional<Paper> said() {
    return Optional.ofNullable(paper);
  }

  /** The paper to print on. */
  Paper paper(ShopProfile profile) {
    return said().orElse(profile.paper());
  }

  /** What to call the file in a sentence. */
  String name() {
    return Output.name(output);
  }

  void write(Console console, OutputFile.Content content) {
    Output.write(console, output, content);
  }
}
