package sheaf.samples;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.Collectors;

/** A sort of made pictures whose reading is measured. */
public enum Condition {
  /** Every kind of flatbed scan. */
  FLATBED("flatbed scans of all sorts", FlatbedMix::make),
  /** The best case. */
  BACKING("flatbed, 300 dpi, on backing", FlatbedMix::onBacking),
  /** Without the backing. */
  BLACK_WHITE("flatbed, 150 to 600 dpi, black or white behind", FlatbedMix::onBlackOrWhite),
  /** Phone photos. */
  PHOTO("phone photos", PhotoMix::make),
  /** Holes that overlap. */
  OVERLAP("flatbed, holes 0.5 to 1.5 diameters apart", FlatbedMix::overlapping),
  /** Line sheets. */
  LINE("line sheets, flatbed scans of all sorts", LineMix::make),
  /** Group sheets. */
  GROUP("group sheets, flatbed scans of all sorts", GroupMix::make),
  /** Sight-in sheets. */
  SIGHT_IN("sight-in sheets, flatbed scans of all sorts", SightInMix::make),
  /** Tear sheets. */
  TEARS("tear sheets, flatbed scans of all sorts", TearMix::make);

  private final String title;
  private final LongFunction<Sample> maker;

  Condition(String title, LongFunction<Sample> maker) {
    this.title = title;
    this.maker = maker;
  }

  /** In words. */
  public String title() {
    return title;
  }

  /** The picture of a seed. */
  public Sample make(long seed) {
    return maker.apply(seed);
  }

  /** As named on the command line. */
  String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** By its name on the command line. */
  static Optional<Condition> labelled(String label) {
    return Arrays.stream(values()).filter(one -> one.label().equals(label)).findFirst();
  }

  /** All names. */
  static String labels() {
    return Arrays.stream(values()).map(Condition::label).collect(Collectors.joining("|"));
  }
}
