package sheaf.samples.scan;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.SplittableRandom;
import sheaf.samples.scene.Page;

/**
 * A flatbed scanner.
 *
 * @param dpi of the scan
 * @param colour or grey
 * @param quarterTurns how the sheet lies, 0 to 3, clockwise
 * @param skew on top of that, in degrees
 * @param scaleX print scale across the sheet
 * @param scaleY print scale down the sheet
 * @param lid what is seen beside the sheet
 * @param blur standard deviation of the optics' blur, in pixels
 * @param noise standard deviation of the sensor's noise, in grey levels
 * @param gamma of the tone curve, 1 for none
 * @param feed greatest share by which the lamp's feed runs ahead or behind
 * @param seed of the noise
 */
public record FlatbedScan(
    int dpi,
    boolean colour,
    int quarterTurns,
    double skew,
    double scaleX,
    double scaleY,
    Color lid,
    double blur,
    double noise,
    double gamma,
    double feed,
    long seed) {

  private static final double MM_PER_INCH = 25.4;

  /** The glass beyond the sheet, in millimetres. */
  private static final double BEYOND = 4;

  /** Scans a page. */
  public BufferedImage scan(Page page) {
    double perMm = dpi / MM_PER_INCH;
    double sheetWidth = page.width() / page.pixelsPerMm() * scaleX;
    double sheetHeight = page.height() / page.pixelsPerMm() * scaleY;
    boolean lying = quarterTurns % 2 == 1;
    double glassWidth = (lying ? sheetHeight : sheetWidth) + 2 * BEYOND;
    double glassHeight = (lying ? sheetWidth : sheetHeight) + 2 * BEYOND;
    int width = (int) Math.round(glassWidth * perMm);
    int height = (int) Math.round(glassHeight * perMm);
    Sampler sampler = new Sampler(page, reduction(page, perMm), lid, blur);
    double turn = Math.toRadians(90 * quarterTurns + skew);
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    Tones tones = new Tones(gamma, noise, new SplittableRandom(seed));
    BufferedImage image =
        new BufferedImage(
            width, height, colour ? BufferedImage.TYPE_3BYTE_BGR : BufferedImage.TYPE_BYTE_GRAY);
    byte[] out = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    int channels = colour ? 3 : 1;
    float[] rgb = new float[3];
    for (int y = 0; y < height; y++) {
      double lag = 1 + feed * Math.sin(2 * Math.PI * y / height);
      double gy = ((y + 0.5) / perMm - glassHeight / 2) * lag;
      for (int x = 0; x < width; x++) {
        double gx = (x + 0.5) / perMm - glassWidth / 2;
        double px = (gx * cos + gy * sin) / scaleX + sheetWidth / scaleX / 2;
        double py = (-gx * sin + gy * cos) / scaleY + sheetHeight / scaleY / 2;
        sampler.sample(px, py, rgb);
        tones.put(rgb, out, (y * width + x) * channels, channels);
      }
    }
    return image;
  }

  /** Pixels of the page that one pixel of the scan covers. */
  private static double reduction(Page page, double perMm) {
    return page.pixelsPerMm() / perMm;
  }
}
