package sheaf.scanner.sheet;

import org.opencv.core.Point;
import sheaf.core.page.MmPoint;

/**
 * Something printed, seen in a picture: how far it lies along one direction. A point is two of
 * these, a place on a line one, across the line.
 *
 * @param place on the page
 * @param seen in the picture
 * @param acrossX direction in the picture in which it is told, a unit vector
 * @param acrossY the same, down
 * @param pixelsPerMm there, in that direction
 * @param part of the print that it belongs to; sightings of one part may share an error
 */
record Sighting(
    MmPoint place, Point seen, double acrossX, double acrossY, double pixelsPerMm, int part) {

  /** How far off a map is here, in pixels. */
  double off(Point mapped) {
    return acrossX * (mapped.x - seen.x) + acrossY * (mapped.y - seen.y);
  }

  /** How far off a map is here, in millimetres on the page; positive or negative. */
  double offMm(PageMap map) {
    return off(map.toPixel(place)) / pixelsPerMm;
  }
}
