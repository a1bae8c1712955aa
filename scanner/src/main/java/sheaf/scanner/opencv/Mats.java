package sheaf.scanner.opencv;

import java.lang.ref.Reference;
import java.util.ArrayDeque;
import java.util.Deque;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * Owns native matrices and releases them all when closed.
 *
 * <p>The garbage collector does not see their memory, so every matrix is made in such a scope:
 * {@code try (Mats mats = new Mats()) { Mat blurred = mats.mat(); ... }}.
 */
public final class Mats implements AutoCloseable {

  private final Deque<Mat> owned = new ArrayDeque<>();

  /** A new empty matrix that lives as long as this scope. */
  public Mat mat() {
    return own(new Mat());
  }

  /** Takes over a matrix. */
  public <M extends Mat> M own(M mat) {
    owned.push(mat);
    return mat;
  }

  /** A filled disc for dilating and opening, its diameter an odd number of pixels. */
  public Mat disc(int diameter) {
    Size size = new Size(diameter, diameter);
    return own(Imgproc.getStructuringElement(Imgproc.MORPH_ELLIPSE, size));
  }

  @Override
  public void close() {
    owned.forEach(Mat::release);
    // Nobody else holds them: without this the garbage collector's cleaner could delete one while
    // its release is still under way.
    Reference.reachabilityFence(this);
  }
}
