package sheaf.scanner.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.opencv.calib3d.Calib3d;
import org.opencv.core.Mat;
import org.opencv.core.MatOfInt;
import org.opencv.core.MatOfPoint;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.picture.UnreadableException;

/** From the marks seen in a picture to the geometry of the sheet in it. */
final class Registration {

  private static final int LEAST_MARKS = 4;

  /** The hull of the marks used must cover this share of the hull of all eight. */
  private static final double LEAST_SPAN = 0.4;

  /** A mark whose corners lie farther off than this, in millimetres, is left out as damaged. */
  private static final double STRAY = 2.5;

  /**
   * On glass a mark's farthest corner misses the map by no more than this, in millimetres: four
   * times what a clean scan shows, and well below what would move a hole by half its uncertainty.
   */
  private static final double FLAT_ENOUGH = 0.5;

  /** Marks that may stray: one folded over or lifted with its corner, and one cut by a hole. */
  private static final int MAY_STRAY = 2;

  private Registration() {}

  /**
   * A sheet's marks in a picture.
   *
   * @param family that they belong to
   * @param marks seen, any four of eight that span the sheet
   */
  record Marks(MarkFamily family, List<SeenMark> marks) {

    /** The corners of all marks, each as two sightings; a mark is a part of its own. */
    List<Sighting> sightings(double pixelsPerMm) {
      List<Sighting> sightings = new ArrayList<>();
      for (SeenMark mark : marks) {
        List<MmPoint> corners = corners(family, mark);
        int part = mark.tag() % MarkFamily.MARKS;
        for (int i = 0; i < corners.size(); i++) {
          Point seen = mark.corners().get(i);
          sightings.add(new Sighting(corners.get(i), seen, 1, 0, pixelsPerMm, part));
          sightings.add(new Sighting(corners.get(i), seen, 0, 1, pixelsPerMm, part));
        }
      }
      return sightings;
    }
  }

  /**
   * Finds the marks of the one sheet in a picture, grey or colour.
   *
   * @throws UnreadableException when there is none, more than one, or too little of it
   */
  static Marks of(Mat picture) throws UnreadableException {
    List<SeenMark> seen = MarkFinder.find(picture);
    if (seen.isEmpty()) {
      throw UnseenSheet.why(picture);
    }
    MarkFamily family = family(seen);
    return new Marks(family, used(family, seen));
  }

  /** The family with most marks; refuses a picture in which another has several too. */
  private static MarkFamily family(List<SeenMark> seen) throws UnreadableException {
    Map<MarkFamily, Integer> votes = new EnumMap<>(MarkFamily.class);
    for (SeenMark mark : seen) {
      votes.merge(MarkFamily.ofTag(mark.tag()).orElseThrow(), 1, Integer::sum);
    }
    MarkFamily most =
        votes.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    boolean another =
        votes.entrySet().stream().anyMatch(e -> e.getKey() != most && e.getValue() > 1);
    if (another) {
      throw twoSheets();
    }
    return most;
  }

  private static List<SeenMark> used(MarkFamily family, List<SeenMark> seen)
      throws UnreadableException {
    Map<Integer, SeenMark> byTag = new HashMap<>();
    for (SeenMark mark : seen) {
      boolean ours = MarkFamily.ofTag(mark.tag()).orElseThrow() == family;
      if (ours && byTag.put(mark.tag(), mark) != null) {
        throw twoSheets();
      }
    }
    List<SeenMark> used = new ArrayList<>(byTag.values());
    used.sort(Comparator.comparingInt(SeenMark::tag));
    refuseUnlessSpanning(family, used);
    return used;
  }

  private static UnreadableException twoSheets() {
    return new UnreadableException(
        ReasonCode.TWO_SHEETS, "More than one sheet is in this picture: take one picture of each.");
  }

  private static void refuseUnlessSpanning(MarkFamily family, List<SeenMark> used)
      throws UnreadableException {
    if (used.size() < LEAST_MARKS) {
      throw new UnreadableException(
          ReasonCode.TOO_FEW_MARKS,
          "%d of the sheet's eight register marks %s seen, four are needed: take the whole sheet, flat, sharp and evenly lit."
              .formatted(used.size(), used.size() == 1 ? "is" : "are"));
    }
    List<RegisterMark> all = family.marks();
    List<RegisterMark> found =
        used.stream().map(mark -> all.get(mark.tag() % MarkFamily.MARKS)).toList();
    if (hullArea(found) < LEAST_SPAN * hullArea(all)) {
      throw new UnreadableException(
          ReasonCode.TOO_FEW_MARKS,
          "The register marks that are seen cover only a part of the sheet: take the whole sheet, flat, sharp and evenly lit.");
    }
  }

  private static double hullArea(List<RegisterMark> marks) {
    try (Mats mats = new Mats()) {
      Point[] centres =
          marks.stream()
              .map(mark -> mark.square().centre())
              .map(c -> new Point(c.x(), c.y()))
              .toArray(Point[]::new);
      MatOfInt hull = mats.own(new MatOfInt());
      Imgproc.convexHull(mats.own(new MatOfPoint(centres)), hull);
      Point[] corners =
          Arrays.stream(hull.toArray()).mapToObj(i -> centres[i]).toArray(Point[]::new);
      return Imgproc.contourArea(mats.own(new MatOfPoint(corners)));
    }
  }

  /** The perspective map that most corners agree on, for a sheet that lies flat. */
  static FlatPage flat(Marks marks) throws UnreadableException {
    FlatPage plain = perspective(marks, Calib3d.LMEDS);
    List<SeenMark> sound =
        marks.marks().stream().filter(mark -> stray(plain, marks.family(), mark) < STRAY).toList();
    if (sound.size() < LEAST_MARKS) {
      throw notFlat();
    }
    if (sound.size() == MarkFamily.MARKS) {
      return corrected(plain, marks);
    }
    if (sound.size() == marks.marks().size()) {
      return plain;
    }
    refuseUnlessSpanning(marks.family(), sound);
    return perspective(new Marks(marks.family(), sound), Calib3d.LMEDS);
  }

  /** The perspective map that fits all corners best, for a first guess. */
  static FlatPage leastSquares(Marks marks) {
    return perspective(marks, 0);
  }

  /** Whether no more than a few marks are off a map, so that they may be on one sheet. */
  static boolean onOneSheet(Marks marks, PageMap map) {
    long astray = marks.marks().stream().filter(m -> stray(map, marks.family(), m) > STRAY).count();
    return astray <= MAY_STRAY && marks.marks().size() - astray >= LEAST_MARKS;
  }

  /** Whether a map shows most marks where they are seen, as it does when the sheet lies flat. */
  static boolean fits(Marks marks, PageMap map) {
    long astray =
        marks.marks().stream()
            .filter(mark -> stray(map, marks.family(), mark) > FLAT_ENOUGH)
            .count();
    return astray <= MAY_STRAY;
  }

  /** Why marks that are not on one sheet are refused. */
  static UnreadableException notFlat() {
    return new UnreadableException(
        ReasonCode.NOT_FLAT,
        "The register marks do not fit on one sheet of paper: press the sheet flat, with no other sheet in the picture, and take it again.");
  }

  /** How far the farthest corner of a mark lies from where a map puts it, in millimetres. */
  private static double stray(PageMap map, MarkFamily family, SeenMark mark) {
    double farthest = 0;
    List<MmPoint> corners = corners(family, mark);
    for (int i = 0; i < corners.size(); i++) {
      double off = distance(map.toPixel(corners.get(i)), mark.corners().get(i));
      farthest = Math.max(farthest, off / Geometry.pixelsPerMm(map, corners.get(i)));
    }
    return farthest;
  }

  private static FlatPage perspective(Marks marks, int method) {
    try (Mats mats = new Mats()) {
      List<Point> page = new ArrayList<>();
      List<Point> picture = new ArrayList<>();
      for (SeenMark mark : marks.marks()) {
        corners(marks.family(), mark)
            .forEach(corner -> page.add(new Point(corner.x(), corner.y())));
        picture.addAll(mark.corners());
      }
      MatOfPoint2f from = mats.own(new MatOfPoint2f());
      MatOfPoint2f to = mats.own(new MatOfPoint2f());
      from.fromList(page);
      to.fromList(picture);
      // Least median of squares: a mark cut by a hole must not pull the others along.
      Mat h = mats.own(Calib3d.findHomography(from, to, method));
      double[] numbers = new double[9];
      h.get(0, 0, numbers);
      return new FlatPage(numbers, Correction.none(marks.family().paper()));
    }
  }

  private static FlatPage corrected(FlatPage plain, Marks marks) {
    List<MmPoint> places = new ArrayList<>();
    List<Point> moves = new ArrayList<>();
    for (SeenMark mark : marks.marks()) {
      List<MmPoint> corners = corners(marks.family(), mark);
      for (int i = 0; i < corners.size(); i++) {
        Point expected = plain.toPixel(corners.get(i));
        Point seen = mark.corners().get(i);
        places.add(corners.get(i));
        moves.add(new Point(seen.x - expected.x, seen.y - expected.y));
      }
    }
    return new FlatPage(plain.perspective(), Correction.fit(marks.family().paper(), places, moves));
  }

  private static List<MmPoint> corners(MarkFamily family, SeenMark mark) {
    return family.marks().get(mark.tag() % MarkFamily.MARKS).corners();
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(a.x - b.x, a.y - b.y);
  }
}
