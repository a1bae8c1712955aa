package sheaf.desk.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.profile.ProfileInForce.Origin;

class NewProfileTest {

  private static final String OLDER =
      "record.address = https://records.example/b/\nshop.name = \"Bögen\" \\ Söhne\n"
          + "paper=a4\nunits=metric\n";

  @TempDir Path folder;

  private HomeFolder home;

  @BeforeEach
  void chooseAFolder() {
    home = new HomeFolder(folder.resolve("home"));
  }

  @Test
  void nothingIsSetInIt() {
    NewProfile made = NewProfile.write(home, false);
    assertThat(made.file()).isEqualTo(home.profile());
    assertThat(made.kept()).isEmpty();
    assertThat(ProfileFile.read(home.profile())).isEqualTo(ShopProfile.USUAL);
  }

  /** So the values shown behind a # are the ones that hold. */
  @Test
  void takingEverySignAwayChangesOnlyWhatIsLeftOutOtherwise() throws Exception {
    Files.write(folder.resolve("logo.png"), Pictures.file("png", 300, 120));
    Path all = folder.resolve("all.toml");
    Files.write(
        all, template().stream().map(line -> line.replaceFirst("^#(\\w+ = )", "$1")).toList());
    ShopProfile profile = ProfileFile.read(all);
    assertThat(profile.shop().name()).contains("The bow bench");
    assertThat(profile.shop().contact()).isPresent();
    assertThat(profile.shop().logo()).isPresent();
    assertThat(profile.recordAddress()).isPresent();
    ShopProfile usual = ShopProfile.USUAL;
    assertThat(profile.paper()).isEqualTo(usual.paper());
    assertThat(profile.units()).isEqualTo(usual.units());
    assertThat(profile.distances()).isEqualTo(usual.distances());
    assertThat(profile.sure()).isEqualTo(usual.sure());
    assertThat(profile.tolerances()).isEqualTo(usual.tolerances());
  }

  @Test
  void everySettingIsInItOnce() throws Exception {
    List<String> shown =
        template().stream()
            .filter(line -> line.matches("#\\w+ = .*"))
            .map(line -> line.replaceAll("#(\\w+) = .*", "$1"))
            .toList();
    assertThat(shown)
        .containsExactlyElementsOf(
            KnownKeys.all().stream().map(key -> key.replaceAll(".*\\.", "")).toList());
  }

  @Test
  void itsLinesEndAsOnThisPlatformAndAreNoWiderThanATerminal() throws Exception {
    NewProfile.write(home, false);
    String text = Files.readString(home.profile());
    assertThat(text).endsWith(System.lineSeparator());
    assertThat(text.replace(System.lineSeparator(), "")).doesNotContain("\r", "\n");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void olderSettingsHoldUntilThereIsAProfileAndAreCarriedOver() throws Exception {
    home.create();
    Files.writeString(home.olderSettings(), OLDER);
    ProfileInForce before = ProfileInForce.of(home);
    assertThat(before.origin()).isEqualTo(Origin.OLDER_SETTINGS);
    assertThat(before.file()).isEqualTo(home.olderSettings());
    assertThat(before.profile().paper()).isEqualTo(Paper.A4);
    assertThat(before.profile().units()).isEqualTo(UnitSystem.METRIC);
    assertThat(before.profile().shop().name()).contains("\"Bögen\" \\ Söhne");
    assertThat(before.profile().recordAddress())
        .contains(new RecordAddress("https://records.example/b/"));

    NewProfile made = NewProfile.write(home, false);
    ProfileInForce after = ProfileInForce.of(home);
    assertThat(after.origin()).isEqualTo(Origin.PROFILE);
    assertThat(after.profile()).isEqualTo(before.profile());
    assertThat(after.unread()).isEmpty();
    assertThat(home.olderSettings()).doesNotExist();
    assertThat(made.kept().orElseThrow()).hasContent(OLDER);
  }

  @Test
  void olderSettingsThatMakeNoSenseAreLeftAsTheyAre() throws Exception {
    home.create();
    Files.writeString(home.olderSettings(), "\npaper=leter\n");
    assertThatThrownBy(() -> NewProfile.write(home, false))
        .hasMessage(home.olderSettings() + ", line 2: paper must be letter or a4, not 'leter'.");
    assertThat(home.olderSettings()).hasContent("\npaper=leter\n");
    assertThat(home.profile()).doesNotExist();
  }

  @Test
  void olderSettingsBesideAProfileAreSaidToBeUnread() throws Exception {
    NewProfile.write(home, false);
    Files.writeString(home.olderSettings(), OLDER);
    assertThat(ProfileInForce.of(home).unread()).contains(home.olderSettings());
    assertThat(ProfileInForce.of(home).profile()).isEqualTo(ShopProfile.USUAL);
  }

  @Test
  void profileThatIsThereIsReplacedOnlyWhenForced() throws Exception {
    home.create();
    Files.writeString(home.profile(), "paper = \"a4\"\n");
    assertThatThrownBy(() -> NewProfile.write(home, false))
        .isInstanceOfSatisfying(
            Trouble.class, trouble -> assertThat(trouble.status()).isEqualTo(ExitStatus.MISUSE))
        .hasMessage(
            home.profile()
                + " is there already: edit it, or have a new one in its place with --force.");
    assertThat(home.profile()).hasContent("paper = \"a4\"\n");
    NewProfile made = NewProfile.write(home, true);
    assertThat(made.kept().orElseThrow()).hasContent("paper = \"a4\"\n");
    assertThat(ProfileFile.read(home.profile())).isEqualTo(ShopProfile.USUAL);
  }

  @Test
  void withoutAnyFileUsualValuesHold() {
    ProfileInForce inForce = ProfileInForce.of(home);
    assertThat(inForce)
        .isEqualTo(
            new ProfileInForce(
                ShopProfile.USUAL, Origin.NOTHING, home.profile(), Optional.empty()));
    assertThat(home.path()).doesNotExist();
  }

  private List<String> template() throws IOException {
    NewProfile.write(home, true);
    return Files.readAllLines(home.profile());
  }
}
