package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

class ProfileFileTest {

  @TempDir Path folder;

  @Test
  void everySettingIsRead() throws Exception {
    byte[] logo = Pictures.file("png", 300, 120);
    Files.write(folder.resolve("logo.png"), logo);
    ShopProfile profile =
        read(
            """
            paper = "a4"
            units = "metric"
            [shop]
            name = "The bow bench"
            contact = "Mill Lane 4"
            logo = "logo.png"
            [record]
            address = "https://records.example/b/"
            [distances]
            yd = [5, 20]
            m = [18]
            [reading]
            sure = 0.995
            [tolerances]
            brace_height = "2 mm"
            speed = "5 fps"
            """);
    assertThat(profile.paper()).isEqualTo(Paper.A4);
    assertThat(profile.units()).isEqualTo(UnitSystem.METRIC);
    assertThat(profile.shop().name()).contains("The bow bench");
    assertThat(profile.shop().contact()).contains("Mill Lane 4");
    assertThat(profile.shop().logo().orElseThrow().file()).isEqualTo(logo);
    assertThat(profile.recordAddress()).contains(new RecordAddress("https://records.example/b/"));
    assertThat(profile.distances(UnitSystem.INCHES))
        .containsExactly(new Distance(5, Unit.YARD), new Distance(20, Unit.YARD));
    assertThat(profile.distances(UnitSystem.METRIC)).containsExactly(new Distance(18, Unit.METRE));
    assertThat(profile.sure()).isEqualTo(0.995);
    assertThat(profile.tolerance(DriftMeasure.BRACE_HEIGHT))
        .isEqualTo(new Tolerance(2, Unit.MILLIMETRE));
    assertThat(profile.tolerance(DriftMeasure.SPEED))
        .isEqualTo(new Tolerance(5, Unit.FEET_PER_SECOND));
    assertThat(profile.tolerance(DriftMeasure.AXLE_TO_AXLE))
        .isEqualTo(DriftMeasure.AXLE_TO_AXLE.usual());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "# nothing\n\n", "[shop]\n[tolerances]\n"})
  void whatIsLeftOutHasItsUsualValue(String text) throws Exception {
    assertThat(read(text)).isEqualTo(ShopProfile.USUAL);
  }

  @Test
  void namesMayBeWrittenInAnyScript() throws Exception {
    assertThat(read("[shop]\nname = \"Łuk i strzała, 弓 Bögen\"\n").shop().name())
        .contains("Łuk i strzała, 弓 Bögen");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void linesMayEndAsOnAnyPlatform(String end) throws Exception {
    String text = String.join(end, "\uFEFF# ours", "paper = \"a4\"", "[shop]", "name = \"B\"", "");
    assertThat(read(text).paper()).isEqualTo(Paper.A4);
    assertThat(read(text).shop().name()).contains("B");
    assertProblems(text + "contact = 5" + end + "logo" + end, 5, 6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "B\\u00f6gen"      | Bögen
          "a \\\\ b"          | a \\ b
          "a \\\\u b"         | a \\u b
          "\\"The\\" bench"   | "The" bench
          'C:\\Users'        | C:\\Users
          """)
  void quotationFollowsTheRulesOfToml(String written, String meant) throws Exception {
    assertThat(read("[shop]\nname = " + written + "\n").shop().name()).contains(meant);
  }

  @Test
  void headingsMayBeWrittenInTheOtherWaysOfToml() throws Exception {
    assertThat(read("shop.name = 'B'\ndistances = { m = [18] }\n").shop().name()).contains("B");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          paper = "leter"            | paper must be letter or a4, not 'leter'.
          paper = 4                  | paper must be letter or a4, not '4'.
          paper = "a3"               | paper must be letter or a4, not 'a3'.
          units = "inch"             | units must be in or metric, not 'inch'.
          units = ["in"]             | units must be in or metric, not 'a list'.
          shop.name = ""             | shop.name must have 1 to 60 characters.
          shop.name = 42             | shop.name must be words in quotation marks, not 42.
          shop.contact = [1]         | shop.contact must be words in quotation marks, not a list.
          shop.contact = "\\n"       | shop.contact must have 1 to 80 characters.
          record.address = "records" | record.address must be a web address such as https://records.example/b/, not 'records'.
          record.address = "https://a.test/b" | record.address must end with / or =, because the record's key is put right behind it: https://a.test/b.
          distances.yd = 20          | distances.yd must be a list of 1 to 7 distances such as [10, 20, 30].
          distances.yd = []          | distances.yd must be a list of 1 to 7 distances such as [10, 20, 30].
          distances.m = [1,2,3,4,5,6,7,8] | distances.m must be a list of 1 to 7 distances such as [10, 20, 30].
          distances.m = [0]          | distances.m must hold whole numbers from 1 to 999, not 0.
          distances.m = [1000]       | distances.m must hold whole numbers from 1 to 999, not 1000.
          distances.m = [18.5]       | distances.m must hold whole numbers from 1 to 999, not 18.5.
          distances.m = ["18 m"]     | distances.m must hold whole numbers from 1 to 999, not '18 m'.
          distances.m = [20, 10]     | distances.m must go from near to far, each once, but 10 stands behind 20.
          reading.sure = 0.5         | reading.sure must be a number from 0.9 to 1, not 0.5.
          reading.sure = 99          | reading.sure must be a number from 0.9 to 1, not 99.
          reading.sure = nan         | reading.sure must be a number from 0.9 to 1, not NaN.
          reading.sure = "0.99"      | reading.sure must be a number from 0.9 to 1, not '0.99'.
          tolerances.speed = 3       | tolerances.speed must be words in quotation marks, not 3.
          tolerances.speed = "3 mm"  | tolerances.speed must be in ft/s or m/s, not '3 mm'.
          tolerances.brace = "1 lb"  | tolerances.brace is no setting; did you mean brace_height under [tolerances]?
          tolerances.axle_to_axle = "2 yd"   | tolerances.axle_to_axle may be at most 1 in, not '2 yd': such a drift would never be told.
          tolerances.axle_to_axle = "116 in" | tolerances.axle_to_axle may be at most 1 in, not '116 in': such a drift would never be told.
          tolerances.axle_to_axle = "0 in"   | tolerances.axle_to_axle must be above zero.
          papper = "a4"              | papper is no setting; did you mean paper, above the first heading?
          name = "B"                 | name is no setting; did you mean name under [shop]?
          shop.paper = "a4"          | shop.paper is no setting; did you mean paper, above the first heading?
          shop.nmae = "B"            | shop.nmae is no setting; did you mean name under [shop]?
          shpo.name = "B"            | [shpo] is no heading of a profile; did you mean [shop]?
          shop = "B"                 | shop is a heading: write [shop] on a line of its own and its settings below.
          paper.size = "a4"          | paper must be letter or a4, not 'a heading'.
          """)
  void settingThatMakesNoSenseIsNamedWithItsLine(String line, String complaint) throws Exception {
    assertComplaint(line, complaint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          paper                 | Expected name = value, not 'paper'.
          paper a4              | Expected name = value, not 'paper a4'.
          paper = a4            | Words must stand in quotation marks: paper = "a4".
          paper = a4 # ours     | Words must stand in quotation marks: paper = "a4".
          paper = “a4”          | Words must stand in quotation marks: paper = "a4".
          tolerances.speed = 3 fps | Words must stand in quotation marks: tolerances.speed = "3 fps".
          paper =               | paper has no value: write one behind the =, or put a # before the line.
          paper = # "a4"        | paper has no value: write one behind the =, or put a # before the line.
          paper = "a4           | paper has a quotation mark that is never closed: end the value with ".
          paper = "a4" "letter" | paper has more behind its value than belongs there: "a4" "letter".
          shop.logo = "C:\\pictures\\logo.png" | shop.logo has a \\ in its value, which has a meaning of its own: write / instead.
          distances.yd = [10 20]   | distances.yd must be a list such as [10, 20, 30], with commas, not '[10 20]'.
          distances.yd = [10, 20   | The list is never closed: end it with ].
          [shop                    | A heading must look like [shop] and stand alone, not '[shop'.
          [shop] name = "B"        | A heading must look like [shop] and stand alone, not '[shop] name = "B"'.
          """)
  void brokenLineIsNamed(String line, String complaint) throws Exception {
    assertComplaint(line, complaint);
  }

  @Test
  void whatStandsTwiceIsNamedWithBothLines() throws Exception {
    assertThatThrownBy(() -> read("paper = \"a4\"\n\npaper = \"letter\"\n"))
        .hasMessage(file() + ", line 3: paper is set twice, first in line 1: keep one.");
    assertThatThrownBy(() -> read("[shop]\n[record]\n[shop]\n"))
        .hasMessage(
            file() + ", line 3: [shop] stands twice, first in line 1: put all below one of them.");
  }

  @Test
  void everythingThatIsWrongIsSaidInOneGo() throws Exception {
    assertProblems(
        """
        paper = leter
        units = "inch"
        [shop
        name = The bow bench
        [distances]
        yd = [10, 20
        m = [10,
             5,
             x,
             2000]
        just words
        [tolerance]
        speed = "1 mm"
        [tolerances]
        speed = "1 mm"
        sped = "3 fps"
        """,
        1,
        2,
        3,
        4,
        6,
        8,
        9,
        10,
        11,
        12,
        15,
        16);
  }

  @Test
  void otherTextIsNotComplainedOfForever() {
    assertThatThrownBy(() -> read("Dear shop,\n".repeat(100)))
        .hasMessageEndingWith(
            "line 11: From here on more lines make no sense: is this a shop profile?");
  }

  @Test
  void whatIsNoTextIsSaid() throws Exception {
    Files.write(file(), "[shop]\nname = \"B\u00f6gen\"".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> ProfileFile.read(file()))
        .hasMessage(file() + " must be saved as UTF-8 text.");
    Files.write(file(), new byte[50_001]);
    assertThatThrownBy(() -> ProfileFile.read(file()))
        .hasMessage(file() + " is too large for a shop profile: more than 50 kB.");
  }

  private void assertComplaint(String line, String complaint) {
    assertThatThrownBy(() -> read("# ours\n" + line.replace("\\\\", "\\") + "\n"))
        .isInstanceOfSatisfying(
            Trouble.class, trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.MISUSE))
        .hasMessage(file() + ", line 2: " + complaint.replace("\\\\", "\\"));
  }

  private void assertProblems(String text, Integer... lines) {
    assertThatThrownBy(() -> read(text))
        .satisfies(
            trouble -> {
              List<Integer> named =
                  trouble
                      .getMessage()
                      .lines()
                      .map(line -> Integer.valueOf(line.replaceAll(".*, line (\\d+): .*", "$1")))
                      .toList();
              assertThat(named).as(trouble.getMessage()).containsExactly(lines);
            });
  }

  private ShopProfile read(String text) throws Exception {
    Files.writeString(file(), text);
    return ProfileFile.read(file());
  }

  private Path file() {
    return folder.resolve("sheaf.toml");
  }
}
