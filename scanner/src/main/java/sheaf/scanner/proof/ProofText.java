package sheaf.scanner.proof;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * Lettering of a proof, which is {@value ProofPicture#WIDTH} pixels wide and must be legible on a
 * phone at 400: capitals are then eight pixels high and more.
 */
enum ProofText {
  /** How the reading ended. */
  HEADING(1.7, 4),
  /** Sentences. */
  SENTENCE(1.1, 2),
  /** A word on the sheet. */
  WORD(1.0, 2),
  /** Half a line without words. */
  GAP(0.5, 1);

  /** Radius of a doubt's number in pixels. */
  static final int BADGE = 21;

  private static final int FONT = Imgproc.FONT_HERSHEY_SIMPLEX;

  /** Height of a capital at size 1, in pixels. */
  private static final double CAPITAL = 22;

  private static final Scalar BLACK = new Scalar(0, 0, 0);
  private static final Scalar WHITE = new Scalar(255, 255, 255);

  private final double scale;
  private final int stroke;

  ProofText(double scale, int stroke) {
    this.scale = scale;
    this.stroke = stroke;
  }

  /** Room that a text takes, in pixels. */
  Size size(String text) {
    Size size = Imgproc.getTextSize(plain(text), FONT, scale, stroke, null);
    return new Size(size.width + 4, size.height + 8);
  }

  /** From one line's foot to the next one's, in pixels. */
  int lineHeight() {
    return (int) Math.round(1.75 * CAPITAL * scale);
  }

  /** Writes on a page, the first letter's foot at a place. */
  void put(Mat page, String text, Point foot, Scalar colour, int width) {
    Imgproc.putText(page, plain(text), foot, FONT, scale, colour, width, Imgproc.LINE_AA);
  }

  /** Writes in black. */
  void put(Mat page, String text, Point foot) {
    put(page, text, foot, BLACK, stroke);
  }

  /** Lines that fit a width in pixels. */
  List<String> wrap(String text, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && size(longer).width > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** A number in white on a black disc. */
  static void badge(Mat page, Point middle, int number) {
    Imgproc.circle(page, middle, BADGE + 3, WHITE, Imgproc.FILLED, Imgproc.LINE_AA);
    Imgproc.circle(page, middle, BADGE, BLACK, Imgproc.FILLED, Imgproc.LINE_AA);
    String digits = String.valueOf(number);
    double scale = digits.length() == 1 ? 1.0 : 0.75;
    Size size = Imgproc.getTextSize(digits, FONT, scale, 2, null);
    Point foot = new Point(middle.x - size.width / 2, middle.y + size.height / 2);
    Imgproc.putText(page, digits, foot, FONT, scale, WHITE, 2, Imgproc.LINE_AA);
  }

  /** The drawing font knows only ASCII. */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("[^\\x20-\\x7E]", "");
  }
}
