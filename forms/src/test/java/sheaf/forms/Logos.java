package sheaf.forms;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Logos made up for tests: a red ring on a clear ground, with a blue left upper corner. */
final class Logos {

  private Logos() {}

  static Logo png(int width, int height) {
    BufferedImage picture = drawn(width, height, BufferedImage.TYPE_INT_ARGB);
    return new Logo(Logo.Format.PNG, width, height, file(picture, "png"));
  }

  /** A JPEG whose pixels a camera stored as an orientation tag of Exif says. */
  static Logo jpeg(BufferedImage stored, int orientation) {
    byte[] file = file(stored, "jpg");
    byte[] tag = exif(orientation);
    ByteBuffer tagged = ByteBuffer.allocate(file.length + tag.length);
    tagged.put(file, 0, 2).put(tag).put(file, 2, file.length - 2);
    return new Logo(Logo.Format.JPEG, stored.getWidth(), stored.getHeight(), tagged.array());
  }

  static BufferedImage drawn(int width, int height, int type) {
    BufferedImage picture = new BufferedImage(width, height, type);
    Graphics2D g = picture.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    if (!picture.getColorModel().hasAlpha()) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, width, height);
    }
    g.setColor(Color.RED);
    int thick = Math.min(width, height) / 5;
    g.fillOval(0, 0, width, height);
    g.setColor(Color.YELLOW);
    g.fillOval(thick, thick, width - 2 * thick, height - 2 * thick);
    g.setColor(Color.BLUE);
    g.fillRect(0, 0, width / 4, height / 4);
    g.dispose();
    return picture;
  }

  /** An APP1 segment with an orientation alone, after CIPA DC-008 (Exif 2.32), 4.5 and 4.6. */
  private static byte[] exif(int orientation) {
    ByteBuffer segment = ByteBuffer.allocate(36);
    segment.putShort((short) 0xFFE1).putShort((short) 34);
    segment.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42);
    segment.putInt(8).putShort((short) 1);
    segment.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    segment.putShort((short) orientation).putShort((short) 0).putInt(0);
    return segment.array();
  }

  private static byte[] file(BufferedImage picture, String format) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(picture, format, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
