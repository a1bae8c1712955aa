package sheaf.scanner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Scalar;

/** A white band of sentences above or below a proof. */
final class ProofBand {

  private static final int MARGIN = 26;

  /** Sentences of a list start this far in, behind their numbers. */
  private static final int INDENT = MARGIN + 2 * ProofText.BADGE + 14;

  private static final Scalar WHITE = new Scalar(255, 255, 255);

  /** One line as it is drawn; a badge is its sentence's number. */
  private record Line(ProofText text, int left, OptionalInt badge, String words) {}

  private final List<Line> lines = new ArrayList<>();

  /** Adds a sentence over the whole width. */
  ProofBand say(ProofText text, String words) {
    add(text, MARGIN, OptionalInt.empty(), words);
    return this;
  }

  /** Adds a sentence of a list, behind its number if it has one. */
  ProofBand list(ProofLegend.Entry entry) {
    add(ProofText.SENTENCE, INDENT, entry.number(), entry.text());
    return this;
  }

  /** Leaves half a line empty. */
  ProofBand gap() {
    lines.add(new Line(ProofText.GAP, MARGIN, OptionalInt.empty(), ""));
    return this;
  }

  private void add(ProofText text, int left, OptionalInt number, String words) {
    OptionalInt badge = number;
    for (String line : text.wrap(words, ProofPicture.WIDTH - (double) left - MARGIN)) {
      lines.add(new Line(text, left, badge, line));
      badge = OptionalInt.empty();
    }
  }

  /** Draws it; the caller releases it. */
  Mat draw() {
    int height = MARGIN + lines.stream().mapToInt(line -> line.text().lineHeight()).sum();
    Mat band = new Mat(height, ProofPicture.WIDTH, CvType.CV_8UC3, WHITE);
    int foot = MARGIN / 2;
    for (Line line : lines) {
      foot += line.text().lineHeight();
      line.text().put(band, line.words(), new Point(line.left(), foot - 6.0));
      int middle = foot - line.text().lineHeight() / 3;
      line.badge()
          .ifPresent(
              number ->
                  ProofText.badge(
                      band, new Point(MARGIN + (double) ProofText.BADGE, middle), number));
    }
    return band;
  }
}
