package sheaf.core.reading;

/**
 * What somebody wrote freely on a sheet, trimmed and on a clean white ground.
 *
 * @param width of it on the sheet, in millimetres
 * @param height of it, in millimetres
 * @param png the picture as a PNG file in Base64; this module only hands it on
 */
public record NotePicture(double width, double height, String png) {

  /** Throws when the picture has no size. */
  public NotePicture {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a picture must have a size: " + width + " x " + height);
    }
  }
}
