package sheaf.samples.digit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.NativeLibraries;

/** Makes the committed filled-in bench card anew: {@code MakeFilledCard DIR}. */
public final class MakeFilledCard {

  private static final int SEED = 61;
  private static final int DPI = 200;

  private static final JobId JOB = JobId.random(new SplittableRandom(SEED));

  private MakeFilledCard() {}

  /** Writes both sides, and what is written on them beside, into the folder that is named. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("usage: MakeFilledCard DIR");
    }
    NativeLibraries.load();
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    for (FilledCardSample side : List.of(front(), back())) {
      Files.write(folder.resolve(side.name()), side.file());
      Files.writeString(folder.resolve(FilledCardSample.truthName(side.name())), side.truth());
    }
  }

  /** A compound bow that came a little out of tune, as found and as left. */
  static FilledCardSample front() {
    Layout layout = Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);
    CardWriter writer = new CardWriter(layout, new SplittableRandom(SEED + 1));
    writer.tick("hand", "right").tick("loosed_by", "release");
    for (String part : List.of("limbs", "cams", "strings", "cables", "riser", "arrows")) {
      writer.tick("inspect_" + part, "sound");
    }
    writer
        .write("draw_length_found", "2906", "29 6/16")
        .write("draw_length_left", "2908", "29 8/16")
        .write("bow_plus_loop_found", "2802", "28 2/16")
        .write("bow_plus_loop_left", "2804", "28 4/16")
        .write("axle_to_axle_found", "3205", "32 5/16")
        .write("axle_to_axle_left", "3204", "32 4/16")
        .write("brace_height_found", " 610", "6 10/16")
        .write("brace_height_left", " 609", "6 9/16")
        .write("peak_weight_found", "625", "62.5")
        .write("peak_weight_left", "630", "63.0")
        .write("holding_weight_found", "115", "11.5")
        .write("holding_weight_left", "120", "12.0")
        .write("limb_bolt_turns_found", "125", "1.25")
        .write("limb_bolt_turns_left", "100", "1.00")
        .write("centre_shot_found", " 13", "13/16")
        .write("centre_shot_left", " 13", "13/16")
        .write("nocking_height_found", " 03", "3/16")
        .write("nocking_height_left", " 04", "4/16")
        .tick("cam_stops_found", "top")
        .tick("cam_stops_left", "both")
        .write("arrow_mass_found", "420", "420")
        .write("arrow_mass_left", "420", "420")
        .write("speed_found", "268", "268")
        .write("speed_left", "271", "271");
    return sample(0, writer, new FilledCard.Notes(List.of(), new MmPoint(0, 0)), layout);
  }

  /** The bow's other numbers, its arrow, sight marks, and a note. */
  static FilledCardSample back() {
    Layout layout = Layouts.current(Variant.BACK, Paper.LETTER, UnitSystem.INCHES);
    CardWriter writer = new CardWriter(layout, new SplittableRandom(SEED + 2));
    writer
        .write("loop_length_found", " 10", "10/16")
        .write("loop_length_left", " 10", "10/16")
        .write("rest_drop_found", "204", "2 4/16")
        .write("rest_drop_left", "108", "1 8/16")
        .write("cam_gap_found", " 01", "1/16")
        .write("cam_gap_left", " 00", "0/16")
        .write("sight_scale_left", " 70", "7.0")
        .write("arrow_spine", " 340", "340")
        .write("arrow_length", "2804", "28 4/16")
        .write("point_mass", "100", "100")
        .write("insert_mass", " 50", "50")
        .write("balance_point", "1600", "16 0/16")
        .tick("vanes", "3")
        .tick("vane_set", "helical")
        .write("sight_distance_1", " 20", "20")
        .write("sight_mark_1", "125", "12.5")
        .write("sight_distance_2", " 40", "40")
        .write("sight_mark_2", "310", "31.0");
    MmRect room = layout.notes().orElseThrow();
    MmPoint start = new MmPoint(room.x() + 8, room.y() + 5);
    FilledCard.Notes notes =
        new FilledCard.Notes(List.of("20yd to 30yd 1/2 L", "R 2x 1/16 - to do"), start);
    return sample(1, writer, notes, layout);
  }

  private static FilledCardSample sample(
      int side, CardWriter writer, FilledCard.Notes notes, Layout layout) {
    SheetCode code = new SheetCode(JOB, side + 1, layout.id());
    byte[] scan =
        FilledCard.scan(code, writer.hands(), notes, DPI, FilledCard.Dirt.LITTLE, SEED + 10 + side);
    return new FilledCardSample(
        FilledCardSample.NAMES.get(side), scan, writer.answers(), !notes.lines().isEmpty());
  }
}
