package sheaf.desk.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sheaf.core.group.EnclosingCircle;
import sheaf.core.group.Group;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.record.Tear;
import sheaf.core.result.GroupResult;
import sheaf.core.result.JobSummary;
import sheaf.core.result.LineDetail;
import sheaf.core.result.LineResult;
import sheaf.core.result.PairDetail;
import sheaf.core.result.PairResult;
import sheaf.desk.profile.Tolerance;

/** What was shot as small pictures, each with what it tells beyond the job's report. */
public final class PictureText {

  private static final String INDENT = "    ";

  private PictureText() {}

  /**
   * A paragraph for each sheet that was shot at.
   *
   * @param smallTear up to this length a tear is told as small
   * @return lines, each with its end
   */
  public static String of(JobSummary job, Tolerance smallTear, int width) {
    StringBuilder text = new StringBuilder();
    tears(RecordOfSheets.tears(job), smallTear, width, text);
    job.pairs().forEach(pair -> pair(pair, width, text));
    job.lines().forEach(line -> line(line, width, text));
    job.groups().forEach(group -> group(group, width, text));
    return text.isEmpty() ? "" : "As shot\n" + text;
  }

  /** The last tear: its point on the spot, and where its tail went. */
  private static void tears(List<Tear> tears, Tolerance smallTear, int width, StringBuilder text) {
    if (tears.isEmpty()) {
      return;
    }
    Tear last = tears.get(tears.size() - 1);
    MmVector way = last.pointToTail();
    String head = "Sheet %d, zone %d, the last tear".formatted(last.sheet(), last.zone());
    text.append(Text.hanging("  ", head + ": " + size(last, smallTear) + ".", width));
    if (!last.isBulletHole()) {
      ShotPicture picture = new ShotPicture(Math.abs(way.dx()), Math.abs(way.dy()));
      for (int tenth = 1; tenth < 10; tenth++) {
        picture.mark(new MmPoint(way.dx() * tenth / 10, way.dy() * tenth / 10), '.');
      }
      picture.mark(new MmPoint(way.dx(), way.dy()), 'T');
      append(picture, "+ point, T tail", width, text);
    }
  }

  private static String size(Tear tear, Tolerance small) {
    String tail = ", tail at %d o'clock".formatted(tear.clock());
    return switch (tear.size(small.in(Unit.MILLIMETRE))) {
      case BULLET_HOLE -> "a bullet hole";
      case SMALL -> "small, " + small + " or less" + tail;
      case LARGE -> "more than " + small + tail;
    };
  }

  private static void pair(PairResult pair, int width, StringBuilder text) {
    if (pair.field().isEmpty() && pair.broadhead().isEmpty()) {
      return;
    }
    text.append(
        Text.sheet(pair.sheet(), pair.distance(), "each from its spot", pair.state(), width));
    ShotPicture picture = picture(pair.field(), pair.broadhead());
    pair.field().ifPresent(group -> marks(group, 'o', picture));
    pair.broadhead().ifPresent(group -> marks(group, 'x', picture));
    pair.field().ifPresent(group -> picture.mark(group.centre(), 'F'));
    pair.broadhead().ifPresent(group -> picture.mark(group.centre(), 'B'));
    append(
        picture, "o field points, F their middle, x broadheads, B theirs, + the spot", width, text);
    PairDetail.sentences(pair).forEach(line -> text.append(Text.hanging(INDENT, line, width)));
  }

  private static void group(GroupResult group, int width, StringBuilder text) {
    if (group.shots().isEmpty()) {
      return;
    }
    Group shots = group.shots().get();
    String what = Text.count(shots.size(), "arrow");
    text.append(Text.sheet(group.sheet(), group.distance(), what, group.state(), width));
    ShotPicture picture = picture(group.shots(), Optional.empty());
    marks(shots, 'o', picture);
    picture.mark(shots.centre(), 'M');
    append(picture, "o arrows, M their middle, + the spot", width, text);
    double across = 2 * EnclosingCircle.of(shots).radius();
    String circle = "A circle of " + Text.tenths(across) + " mm holds them all.";
    text.append(Text.hanging(INDENT, circle, width));
  }

  private static void line(LineResult line, int width, StringBuilder text) {
    List<MmPoint> all = line.bands().stream().flatMap(band -> band.shots().stream()).toList();
    if (all.isEmpty()) {
      return;
    }
    double farthest = all.stream().mapToDouble(shot -> Math.abs(shot.x())).max().orElse(0);
    text.append(
        Text.sheet(line.sheet(), Optional.empty(), "from near to far", line.state(), width));
    for (LineResult.Band band : line.bands()) {
      ShotPicture picture = new ShotPicture(farthest, 0);
      picture.mark(new MmPoint(0, 0), '|');
      band.shots().forEach(shot -> picture.mark(new MmPoint(shot.x(), 0), 'o'));
      String from = band.distance().map(Object::toString).orElse("band " + band.number());
      text.append(String.format(Locale.ROOT, "%s%8s ", INDENT, from));
      text.append(picture.text("").lines().skip(1).findFirst().orElseThrow()).append('\n');
    }
    String scale = "A letter is %d mm wide.".formatted(new ShotPicture(farthest, 0).widthMm());
    text.append(Text.hanging(INDENT, scale, width));
    LineDetail.sentences(line.shots())
        .forEach(sentence -> text.append(Text.hanging(INDENT, sentence, width)));
  }

  private static ShotPicture picture(Optional<Group> one, Optional<Group> other) {
    List<MmPoint> all =
        Stream.of(one, other).flatMap(Optional::stream).flatMap(g -> g.shots().stream()).toList();
    return new ShotPicture(
        all.stream().mapToDouble(shot -> Math.abs(shot.x())).max().orElse(0),
        all.stream().mapToDouble(shot -> Math.abs(shot.y())).max().orElse(0));
  }

  private static void marks(Group group, char letter, ShotPicture picture) {
    group.shots().forEach(shot -> picture.mark(shot, letter));
  }

  private static void append(ShotPicture picture, String legend, int width, StringBuilder text) {
    text.append(picture.text(INDENT));
    String scale = "; a letter is %d mm wide.".formatted(picture.widthMm());
    text.append(Text.hanging(INDENT, legend + scale, width));
  }
}
