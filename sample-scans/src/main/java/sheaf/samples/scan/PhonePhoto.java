package sheaf.samples.scan;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/**
 * A photo of a sheet that hangs on a board or lies on a table.
 *
 * @param width of the picture as stored, in pixels
 * @param height the same, down
 * @param orientation that the file states: 1, 3, 6 or 8 of Exif
 * @param pose of the camera, as the picture is shown
 * @param lens of the camera
 * @param paper how it stands off the board
 * @param lighting of the sheet
 * @param scale of the print
 * @param blur standard deviation of defocus, in pixels
 * @param motion by which the camera moved, in pixels
 * @param noise standard deviation of the sensor's noise on white, in grey levels
 * @param sharpening by the phone, 0 for none
 * @param seed of all that is random
 */
public record PhonePhoto(
    int width,
    int height,
    int orientation,
    Pose pose,
    Lens lens,
    PaperShape paper,
    Lighting lighting,
    PrintScale scale,
    double blur,
    double motion,
    double noise,
    double sharpening,
    long seed) {

  /** Light is gathered in the middle of each pixel; optics blur more than that. */
  private static final double[][] POINTS = {{0.5, 0.5}};

  /** Phones brighten the middle tones. */
  private static final double GAMMA = 0.92;

  /** Takes the picture. */
  public BufferedImage take(Page page, Backdrop backdrop) {
    SplittableRandom random = new SplittableRandom(seed);
    PhotoView view = new PhotoView(this, page, backdrop, random);
    Tones tones = new Tones(GAMMA, 0.7 * noise, noise, random);
    double angle = random.nextDouble(2 * Math.PI);
    Streak streak = Streak.of(motion * Math.cos(angle), motion * Math.sin(angle));
    return new Exposure(width, height, true, blur, streak, sharpening, tones).take(view, POINTS);
  }

  /**
   * Where a place of the sheet is seen in the picture, upright as a viewer shows it, in pixels;
   * whole numbers are pixel centres.
   */
  public double[] seen(MmPoint place, Paper size) {
    double pageWidth = size.width() * scale.x();
    double pageHeight = size.height() * scale.y();
    Sight sight = sight(pageWidth, pageHeight);
    double[] pixel = new double[2];
    sight.project(
        paper.on(pageWidth, pageHeight),
        place.x() * scale.x() - pageWidth / 2,
        place.y() * scale.y() - pageHeight / 2,
        new double[3],
        pixel);
    double[] upright =
        switch (orientation) {
          case 3 -> new double[] {width - pixel[0], height - pixel[1]};
          case 6 -> new double[] {height - pixel[1], pixel[0]};
          case 8 -> new double[] {pixel[1], width - pixel[0]};
          default -> pixel;
        };
    return new double[] {upright[0] - 0.5, upright[1] - 0.5};
  }

  /** What the camera sees where, in the picture as stored. */
  Sight sight(double pageWidth, double pageHeight) {
    return new Sight(asStored(), lens, width, height, pageWidth, pageHeight);
  }

  /** The pose as the stored picture shows it, which a viewer turns by the stated orientation. */
  private Pose asStored() {
    int turn =
        switch (orientation) {
          case 1 -> 0;
          case 3 -> 180;
          case 6 -> -90;
          case 8 -> 90;
          default -> throw new IllegalArgumentException("not a turn: " + orientation);
        };
    return new Pose(
        pose.tilt(), pose.toward(), pose.roll() + turn, pose.fill(), pose.aimX(), pose.aimY());
  }
}
