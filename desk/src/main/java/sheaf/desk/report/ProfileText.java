package sheaf.desk.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.desk.home.RecordAddress;
import sheaf.desk.profile.ProfileInForce;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.StorePlace;
import sheaf.forms.Logo;

/** A shop profile for a person. */
public final class ProfileText {

  private static final String NOT_SET = "(not set)";

  /** Room for the longest name of a setting and two spaces, in characters. */
  private static final int COLUMN = 22;

  private final StringBuilder text = new StringBuilder();
  private final int width;

  private ProfileText(int width) {
    this.width = width;
  }

  /**
   * Where a profile lies, and a line for each setting.
   *
   * @param newCommand what to type to have a profile written
   * @param width of a line, in characters
   */
  public static String of(ProfileInForce inForce, String newCommand, int width) {
    ProfileText profile = new ProfileText(width);
    profile.text.append(Text.hanging("", origin(inForce, newCommand), width));
    inForce
        .unread()
        .map(file -> file + " is no longer read, since this profile holds instead.")
        .ifPresent(note -> profile.text.append(Text.hanging("", note, width)));
    profile.settings(inForce.profile());
    return profile.text.toString();
  }

  private static String origin(ProfileInForce inForce, String newCommand) {
    return switch (inForce.origin()) {
      case PROFILE -> "Shop profile " + inForce.file();
      case OLDER_SETTINGS ->
          "From the older settings in %s. To carry them over into a shop profile: %s"
              .formatted(inForce.file(), newCommand);
      case NOTHING ->
          "There is no %s yet, so usual values hold. To have one: %s"
              .formatted(inForce.file(), newCommand);
    };
  }

  private void settings(ShopProfile profile) {
    line("name", profile.shop().name());
    line("contact", profile.shop().contact());
    line("logo", profile.shop().logo().map(Logo::toString));
    line("paper", Optional.of(profile.paper().label()));
    line("units", Optional.of(profile.units().label()));
    line("record address", profile.recordAddress().map(RecordAddress::text));
    line("distances", Optional.of(distances(profile.distances(UnitSystem.INCHES))));
    line("", Optional.of(distances(profile.distances(UnitSystem.METRIC))));
    line("sure numbers", Optional.of("from " + profile.sure()));
    line(
        "store",
        Optional.of(profile.database().map(StorePlace::spoken).orElse("a file in this folder")));
    line("originals", Optional.of(profile.originals().map(Path::toString).orElse("with it")));
    line("scan folder", profile.scans().map(Path::toString));
    text.append("  tolerances\n");
    profile
        .tolerances()
        .forEach((measure, most) -> line("  " + measure.key(), Optional.of(most.toString())));
  }

  private void line(String name, Optional<String> value) {
    String lead = "  " + name + " ".repeat(COLUMN - name.length());
    text.append(Text.hanging(lead, value.orElse(NOT_SET), width));
  }

  private static String distances(List<Distance> distances) {
    return distances.stream().map(Distance::toString).collect(Collectors.joining(", "));
  }
}
