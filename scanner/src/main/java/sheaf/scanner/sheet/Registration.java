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
   * Corners may miss the fitted map by this much, in millimetres: four times what a clean scan
   * shows, and well below what would move a hole by half its own uncertainty.
   */
  private static final double FLAT_ENOUGH = 0.5;

  private Registration() {}

  static Geometry of(Mat grey) throws UnreadableException {
    List<SeenMark> seen = MarkFinder.find(grey);
    if (seen.isEmpty()) {
      throw UnseenSheet.why(grey);
    }
    MarkFamily family = family(seen);
    return fit(family, used(family, seen));
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

  private static Geometry fit(MarkFamily family, List<SeenMark> used) throws UnreadableException {
    Geometry geometry = perspective(family, used);
    List<SeenMark> sound = used.stream().filter(mark -> stray(geometry, mark) < STRAY).toList();
    Geometry better = geometry;
    if (sound.size() < LEAST_MARKS) {
      throw notFlat(geometry);
    }
    if (sound.size() < used.size()) {
      refuseUnlessSpanning(family, sound);
      better = perspective(family, sound);
    }
    if (sound.size() == MarkFamily.MARKS) {
      better = corrected(better, sound);
    }
    if (better.residual() > FLAT_ENOUGH) {
      throw notFlat(better);
    }
    return better;
  }

  private static UnreadableException notFlat(Geometry geometry) {
    return new UnreadableException(
        ReasonCode.NOT_FLAT,
        "The register marks do not fit on one flat sheet (%.1f mm off): press the sheet flat, with no other sheet in the picture, and take it again."
            .formatted(geometry.residual()));
  }

  /** How far the farthest corner of a mark lies from where the geometry puts it, in mm. */
  private static double stray(Geometry geometry, SeenMark mark) {
    double farthest = 0;
    List<MmPoint> corners = corners(geometry.family(), mark);
    for (int i = 0; i < corners.size(); i++) {
      farthest =
          Math.max(farthest, distance(geometry.toPixel(corners.get(i)), mark.corners().get(i)));
    }
    return farthest / geometry.pixelsPerMm();
  }

  private static Geometry perspective(MarkFamily family, List<SeenMark> used) {
    try (Mats mats = new Mats()) {
      List<Point> page = new ArrayList<>();
      List<Point> picture = new ArrayList<>();
      for (SeenMark mark : used) {
        corners(family, mark).forEach(corner -> page.add(new Point(corner.x(), corner.y())));
        picture.addAll(mark.corners());
      }
      MatOfPoint2f from = mats.own(new MatOfPoint2f());
      MatOfPoint2f to = mats.own(new MatOfPoint2f());
      from.fromList(page);
      to.fromList(picture);
      // Least median of squares: a mark cut by a hole must not pull the others along.
      Mat h = mats.own(Calib3d.findHomography(from, to, Calib3d.LMEDS));
      double[] numbers = new double[9];
      h.get(0, 0, numbers);
      Geometry plain =
          new Geometry(family, numbers, Correction.none(family.paper()), 0, used.size());
      return withResidual(plain, used);
    }
  }

  private static Geometry corrected(Geometry plain, List<SeenMark> used) {
    List<MmPoint> places = new ArrayList<>();
    List<Point> moves = new ArrayList<>();
    for (SeenMark mark : used) {
      List<MmPoint> corners = corners(plain.family(), mark);
      for (int i = 0; i < corners.size(); i++) {
        Point expected = plain.toPixel(corners.get(i));
        Point seen = mark.corners().get(i);
        places.add(corners.get(i));
        moves.add(new Point(seen.x - expected.x, seen.y - expected.y));
      }
    }
    Correction correction = Correction.fit(plain.family().paper(), places, moves);
    return withResidual(
        new Geometry(plain.family(), plain.perspective(), correction, 0, plain.marks()), used);
  }

  private static Geometry withResidual(Geometry geometry, List<SeenMark> used) {
    double sum = 0;
    int count = 0;
    for (SeenMark mark : used) {
      List<MmPoint> corners = corners(geometry.family(), mark);
      for (int i = 0; i < corners.size(); i++) {
        double off = distance(geometry.toPixel(corners.get(i)), mark.corners().get(i));
        sum += off * off;
        count++;
      }
    }
    double residual = Math.sqrt(sum / count) / geometry.pixelsPerMm();
    return new Geometry(
        geometry.family(),
        geometry.perspective(),
        geometry.correction(),
        residual,
        geometry.marks());
  }

  private static List<MmPoint> corners(MarkFamily family, SeenMark mark) {
    return family.marks().get(mark.tag() % MarkFamily.MARKS).corners();
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(a.x - b.x, a.y - b.y);
  }
}
