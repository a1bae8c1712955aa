package sheaf.scanner.opencv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.opencv.opencv_java;
import org.opencv.core.Core;

/**
 * Loads OpenCV's native libraries once.
 *
 * <p>On Linux they are copied once into a cache folder and loaded in the order of their
 * dependencies: that takes a tenth of a second where the general loader takes two and needs a
 * desktop's libraries. Elsewhere, and when no cache can be written, the general loader does it.
 */
public final class NativeLibraries {

  /** Changes with the libraries, so that an older cache is never mixed with newer ones. */
  private static final String CACHE = "opencv-" + Core.VERSION + "-1.5.13";

  private static final List<String> OPENBLAS =
      List.of("libquadmath.so.0", "libgfortran.so.5", "libopenblas.so.0");

  private static final List<String> OPENCV =
      List.of(
          "core",
          "flann",
          "imgproc",
          "imgcodecs",
          "ml",
          "dnn",
          "features2d",
          "photo",
          "plot",
          "phase_unwrapping",
          "videoio",
          "xphoto",
          "dnn_superres",
          "img_hash",
          "saliency",
          "text",
          "wechat_qrcode",
          "xfeatures2d",
          "bioinspired",
          "calib3d",
          "objdetect",
          "shape",
          "video",
          "structured_light",
          "ximgproc",
          "aruco",
          "bgsegm",
          "face",
          "tracking");

  private NativeLibraries() {}

  /** Makes OpenCV ready; does nothing after the first call. */
  public static void load() {
    Loaded.once();
  }

  /** Initialised by the first call, by one thread only, as the language promises. */
  private static final class Loaded {
    static {
      if (!loadFromCache()) {
        Loader.load(opencv_java.class);
      }
      // Pages are read side by side, which uses every processor without one waiting for another;
      // threads of OpenCV's own would only stand in their way, and add their buffers to memory.
      Core.setNumThreads(1);
    }

    static void once() {}
  }

  private static boolean loadFromCache() {
    String platform = Loader.getPlatform();
    if (!platform.startsWith("linux-")) {
      return false;
    }
    try {
      Path folder = Files.createDirectories(cacheFolder().resolve(CACHE + "-" + platform));
      for (String library : OPENBLAS) {
        System.load(copy("/org/bytedeco/openblas/" + platform + "/" + library, folder));
      }
      for (String module : OPENCV) {
        String library = "libopencv_" + module + ".so.413";
        System.load(copy("/org/bytedeco/opencv/" + platform + "/" + library, folder));
      }
      System.load(copy("/org/bytedeco/opencv/" + platform + "/libopencv_java.so", folder));
      return true;
    } catch (IOException | UnsatisfiedLinkError e) {
      return false;
    }
  }

  private static Path cacheFolder() {
    String configured = System.getenv("XDG_CACHE_HOME");
    Path caches =
        configured != null && !configured.isEmpty()
            ? Path.of(configured)
            : Path.of(System.getProperty("user.home"), ".cache");
    return caches.resolve("sheaf");
  }

  /** Copies a library unless it is there; under another name first, so that none is seen half. */
  private static String copy(String resource, Path folder) throws IOException {
    Path target = folder.resolve(resource.substring(resource.lastIndexOf('/') + 1));
    if (!Files.exists(target)) {
      Path partial = Files.createTempFile(folder, "copying", ".part");
      try (InputStream library = NativeLibraries.class.getResourceAsStream(resource)) {
        if (library == null) {
          throw new IOException("missing on the class path: " + resource);
        }
        Files.copy(library, partial, StandardCopyOption.REPLACE_EXISTING);
        Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(partial);
      }
    }
    return target.toString();
  }
}
