package sheaf.desk.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;

class SettingsTest {

  @TempDir Path folder;

  @Test
  void withoutAFileNothingIsSet() {
    assertThat(Settings.of(folder.resolve("sheaf.properties"))).isEqualTo(Settings.NONE);
  }

  @Test
  void everySettingIsRead() throws Exception {
    Settings settings =
        Settings.of(
            file(
                "\uFEFF# our shop\n\nrecord.address = https://records.example/b/\r\n"
                    + "shop.name=Bow bench, back room\npaper=a4\nunits=metric\n"));
    assertThat(settings.recordAddress()).contains(new RecordAddress("https://records.example/b/"));
    assertThat(settings.shop()).contains("Bow bench, back room");
    assertThat(settings.paper()).contains(Paper.A4);
    assertThat(settings.units()).contains(UnitSystem.METRIC);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          paper=leter                   | paper must be letter or a4, not 'leter'.
          units=inch                    | units must be in or metric, not 'inch'.
          colour=red                    | colour is no setting; there are record.address, shop.name, paper and units.
          paper                         | expected name = value, not 'paper'.
          shop.name=                    | shop.name must have 1 to 60 characters.
          record.address=records        | record.address must be a web address such as https://records.example/b/, not 'records'.
          record.address=ftp://a.test/  | record.address must be a web address such as https://records.example/b/, not 'ftp://a.test/'.
          record.address=https://a.test/b | record.address must end with / or =, because the record's key is put right behind it: https://a.test/b.
          """)
  void lineThatMakesNoSenseIsNamed(String line, String complaint) throws Exception {
    Path file = file("paper=a4\n" + line + "\n");
    assertThatThrownBy(() -> Settings.of(file))
        .isInstanceOfSatisfying(
            Trouble.class, trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.MISUSE))
        .hasMessage(file + ", line 2: " + complaint);
  }

  @Test
  void allThatMakesNoSenseIsSaidALineEach() throws Exception {
    Path file = file("paper=leter\nunits=in\nshop.name=\ncolour=red\n");
    assertThatThrownBy(() -> Settings.of(file))
        .hasMessage(
            "%1$s, line 1: paper must be letter or a4, not 'leter'.%n%1$s, line 3: shop.name must have 1 to 60 characters.%n%1$s, line 4: colour is no setting; there are record.address, shop.name, paper and units."
                .formatted(file)
                .replace(System.lineSeparator(), "\n"));
  }

  @Test
  void otherEncodingIsSaid() throws Exception {
    Path file = folder.resolve("sheaf.properties");
    Files.write(file, "shop.name=B\u00f6gen".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> Settings.of(file)).hasMessage(file + " must be saved as UTF-8 text.");
  }

  private Path file(String text) throws Exception {
    return Files.writeString(folder.resolve("sheaf.properties"), text);
  }
}
