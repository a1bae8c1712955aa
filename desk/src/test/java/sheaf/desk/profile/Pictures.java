package sheaf.desk.profile;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Picture files made by Java's own writers. */
final class Pictures {

  private Pictures() {}

  static byte[] file(String format, int widthPx, int heightPx) throws IOException {
    BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.ORANGE);
    pen.fillOval(0, 0, widthPx, heightPx);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }
}
