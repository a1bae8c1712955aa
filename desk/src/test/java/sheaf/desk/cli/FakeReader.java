package sheaf.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import sheaf.core.reading.PageReading;
import sheaf.desk.Pages;
import sheaf.desk.intake.PageSource;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader.Proof;

/** Reads files whose content is the name of what they are to say; all else is refused. */
final class FakeReader implements PageSource {

  static final byte[] PICTURE = {(byte) 0x89, 'P', 'N', 'G'};

  private final Map<String, List<PageReading>> known = new HashMap<>();

  FakeReader with(String content, PageReading... pages) {
    known.put(content, List.of(pages));
    return this;
  }

  @Override
  public void read(String name, byte[] file, Proof proof, Consumer<ReadPage> pages) {
    List<PageReading> said =
        known.getOrDefault(new String(file, StandardCharsets.UTF_8), List.of(Pages.refused()));
    for (int i = 0; i < said.size(); i++) {
      String source = said.size() == 1 ? name : name + "#" + (i + 1);
      boolean drawn = proof == Proof.DRAW && said.get(i).sheet().isPresent();
      pages.accept(
          new ReadPage(said.get(i).from(source), drawn ? Optional.of(PICTURE) : Optional.empty()));
    }
  }
}
