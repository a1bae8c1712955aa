package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.desk.work.Printable;

class PrintCommandTest {

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void everyPaperIsPrinted(Printable what) throws Exception {
    Path file = folder.resolve("out.pdf");
    CommandRun run = print(what.label(), "-o", file.toString());
    assertThat(run.status()).isZero();
    assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    assertThat(run.err().replaceAll("\\s+", " "))
        .startsWith("1 " + what.noun() + " on letter paper")
        .contains("Print at 100 %");
    assertThat(run.out()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"tear, tabloid", "line, a3", "pair, tabloid", "group, a3", "sight-in, a3"})
  void targetsComeOnLargePaperToo(String what, String paper) {
    CommandRun run = print(what, "--paper", paper, "-o", "-");
    assertThat(run.status()).isZero();
    assertThat(run.err()).contains("on " + paper + " paper");
  }

  @ParameterizedTest
  @ValueSource(strings = {"compound", "recurve", "crossbow"})
  void everyBowHasACardOfTwoSides(String bow) {
    assertThat(print("bench-card", "--bow", bow, "-o", "-").err()).contains("2 pages for both");
    assertThat(print("return-card", "--bow", bow, "-o", "-").err()).contains("2 pages for both");
  }

  @Test
  void aPackIsTheBenchCardAndTheSheetsOfItsList() {
    // A card's leaf, and a leaf with an empty back for each of three targets but the last.
    CommandRun both = print("pack", "--sheets", "tear*2,sight-in", "-o", "-");
    CommandRun one = print("pack", "--sheets", "tear*2, sight-in", "--sides", "one", "-o", "-");
    assertThat(both.err()).contains("(7 pages for both sides, job ");
    assertThat(one.err()).contains("(5 pages, job ");
  }

  @Test
  void aListThatNamesACardGetsNoOther() {
    assertThat(print("pack", "--sheets", "return-card,pair", "-o", "-").err())
        .contains("(3 pages for both sides, job ");
  }

  @Test
  void aReturnCardOfAJobThatWasNeverReadIsRefused() {
    CommandRun run = print("return-card", "--from", "7G4KQ-2M8XE-0", "-o", "-");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("7G4KQ-2M8XE-0").contains("is not known");
  }

  @Test
  void standardOutputGetsThePdfAndNothingElse() {
    CommandRun run =
        print("pair", "--dots", "one", "--paper", "a4", "--units", "metric", "-o", "-");
    assertThat(run.status()).isZero();
    assertThat(run.out()).startsWith("%PDF-");
    assertThat(run.err()).contains("pair sheet on a4 paper");
  }

  @Test
  void settingsChooseThePaper() throws Exception {
    Files.writeString(folder.resolve("sheaf.properties"), "paper=a4\n");
    assertThat(print("pair", "-o", "-").err()).contains("a4 paper");
    assertThat(print("pair", "--paper", "letter", "-o", "-").err()).contains("letter paper");
  }

  @Test
  void distancesOfTheShopStandInTheBoxesUnlessTheCommandLineSaysOthers() throws Exception {
    assertThat(digits()).isEmpty();
    Files.writeString(folder.resolve("sheaf.toml"), "[distances]\nyd = [7, 14, 28]\n");
    assertThat(digits()).isEqualTo("71428");
    assertThat(digits("--units", "metric")).isEmpty();
    assertThat(digits("--distances", "3,5,10,20,30,40")).isEqualTo("35102030");
    assertThat(digits("--distances", "written")).isEmpty();
  }

  /** What is printed in digit boxes: nothing else on a line sheet is 20 points high. */
  private String digits(String... options) throws Exception {
    Path file = folder.resolve("line.pdf");
    List<String> words = new ArrayList<>(List.of("line", "-o", file.toString()));
    words.addAll(List.of(options));
    assertThat(print(words.toArray(String[]::new)).status()).isZero();
    StringBuilder digits = new StringBuilder();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            if (letter.getFontSizeInPt() == 20 && letter.getUnicode().matches("\\d")) {
              digits.append(letter.getUnicode());
            }
          }
        };
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      stripper.getText(document);
    }
    return digits.toString();
  }

  @Test
  void everyPackOfAPadHasAJobOfItsOwn() {
    CommandRun run = print("pack", "--jobs", "3", "-o", "-");
    assertThat(run.err()).startsWith("3 packs on letter paper (").contains("a job id for each");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          print                              | Missing required
          print pair                         | Missing required option: '--output=FILE'
          print poster -o -                  | 'poster' is none of pack, bench-card, tear, line
          print pair --paper a2 -o -         | --paper: 'a2' is none of letter, a4, tabloid, a3
          print bench-card --paper a3 -o -   | A bench card comes on letter and a4 paper only
          print pack --sheets poster -o -    | --sheets: 'poster' is none of bench-card, return-card
          print pack --sheets tear*0 -o -    | 'tear*0' must say how often with a number from 1 to 99
          print pack --sheets tear*x -o -    | 'tear*x' must say how often with a number from 1 to 99
          print pack --sheets tear,,line -o - | a sheet is missing in 'tear,,line'
          print pack --sheets tear*99,line -o - | more than 99 sheets in one pack
          print pair --sheets tear -o -      | --sheets is for packs only
          print pair --sides one -o -        | --sides is for packs only
          print tear --bow recurve -o -      | --bow is for packs and cards only
          print pair --distances printed -o - | --distances is for line sheets and packs only
          print line --distances 5,3 -o -    | --distances: '5,3' is none of written, printed, or 1 to 7
          print line --distances 1,2,3,4,5,6,7,8 -o - | 1 to 7 whole numbers up to 999 from near to far
          print pack --distances printed -o - | a pack has --sheets line-printed
          print pack --from 7G4KQ-2M8XE-0 -o - | --from is for return cards only
          print pair --units cubits -o -     | 'cubits' is none of in, metric
          print pack --dots one -o -         | --dots is for pair sheets only
          print pair --copies 0 -o -         | --copies (or --jobs) must be 1 to 2000, not 0
          print pair --copies many -o -      | 'many' is not an int
          print pair --colour red -o -       | There is no option '--colour'
          """)
  void misuseIsOneSentenceAndAHint(String words, String complaint) {
    CommandRun run = CommandRun.of(folder, words.split(" +"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(2);
    assertThat(run.err())
        .startsWith("sheaf: ")
        .contains(complaint)
        .contains("Try: sheaf print --help");
  }

  private CommandRun print(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = "print";
    System.arraycopy(words, 0, all, 1, words.length);
    return CommandRun.of(folder, all);
  }
}
