package sheaf.desk.profile;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every key that a profile may have, as a dotted name such as {@code shop.name}. */
final class KnownKeys {

  private static final List<String> ALL =
      Stream.concat(
              Stream.of(
                  "paper",
                  "units",
                  "shop.name",
                  "shop.contact",
                  "shop.logo",
                  "record.address",
                  "distances.yd",
                  "distances.m",
                  "reading.sure",
                  "store.database",
                  "store.originals",
                  "scans.folder"),
              Arrays.stream(DriftMeasure.values()).map(measure -> "tolerances." + measure.key()))
          .toList();

  private static final List<String> HEADINGS =
      ALL.stream()
          .map(KnownKeys::heading)
          .filter(heading -> !heading.isEmpty())
          .distinct()
          .toList();

  /** Under another heading counts like so many wrong letters: a slip, but a rarer one. */
  private static final int OTHER_HEADING = 2;

  private KnownKeys() {}

  static List<String> all() {
    return ALL;
  }

  static List<String> headings() {
    return HEADINGS;
  }

  /** What is wrong with a key that is not known, and which known one it is nearest to. */
  static String complaint(String key) {
    return key + " is no setting; did you mean " + placed(nearest(key, ALL)) + "?";
  }

  /** What is wrong with a heading that is not known, and which known one it is nearest to. */
  static String headingComplaint(String heading) {
    return "["
        + heading
        + "] is no heading of a profile; did you mean ["
        + nearest(heading, HEADINGS)
        + "]?";
  }

  private static String nearest(String key, List<String> known) {
    return known.stream().min(Comparator.comparingInt(one -> distance(key, one))).orElseThrow();
  }

  private static int distance(String key, String known) {
    String a = last(key);
    String b = last(known);
    int spelling =
        a.equals(b) ? 0 : a.contains(b) || b.contains(a) ? 1 : EditDistance.between(a, b);
    return spelling + (heading(key).equals(heading(known)) ? 0 : OTHER_HEADING);
  }

  private static String heading(String key) {
    return key.substring(0, Math.max(0, key.indexOf('.')));
  }

  private static String last(String key) {
    return key.substring(key.lastIndexOf('.') + 1);
  }

  private static String placed(String key) {
    String heading = heading(key);
    return heading.isEmpty()
        ? key + ", above the first heading"
        : last(key) + " under [" + heading + "]";
  }
}
