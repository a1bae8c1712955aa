package sheaf.scanner.sheet;

import java.util.List;
import org.opencv.core.Point;

/**
 * A register mark seen in a picture.
 *
 * @param tag its number
 * @param corners in pixels, in the order of {@link sheaf.core.layout.RegisterMark#corners()}
 */
record SeenMark(int tag, List<Point> corners) {}
