package sheaf.samples;

import java.util.List;
import java.util.function.Supplier;

/** The committed samples, and how each is made. */
final class SampleList {

  /**
   * A sample.
   *
   * @param name of its file
   * @param maker makes it
   */
  record Entry(String name, Supplier<Sample> maker) {}

  private SampleList() {}

  static List<Entry> all() {
    return List.of(
        new Entry("job-1-bench-card.jpg", JobSamples::benchCard),
        new Entry("job-2-first-pair-backing.jpg", JobSamples::firstPair),
        new Entry("job-3-shared-dot-black-upside-down.jpg", JobSamples::sharedDot),
        new Entry("job-4-last-pair-backing.jpg", JobSamples::lastPair),
        new Entry("job-5-line-backing.jpg", TargetSamples::line),
        new Entry("job-6-group-backing.jpg", TargetSamples::group),
        new Entry("sight-in-a4-black.jpg", TargetSamples::sightIn),
        new Entry("white-lid.png", FlatbedSamples::whiteLid),
        new Entry("touching-holes.jpg", FlatbedSamples::touching),
        new Entry("printed-off-size.jpg", FlatbedSamples::offSize),
        new Entry("check-five-holes.jpg", FlatbedSamples::fiveHoles),
        new Entry("check-head-mixed-up.jpg", FlatbedSamples::mixedUp),
        new Entry("photo-tilted-shadow.jpg", PhotoSamples::tiltedPhoto),
        new Entry("photo-backing.jpg", PhotoSamples::backingPhoto),
        new Entry("refused-half-a-sheet.jpg", PhotoSamples::halfSheet));
  }
}
