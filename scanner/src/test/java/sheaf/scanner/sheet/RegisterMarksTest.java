package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.opencv.core.Mat;
import org.opencv.objdetect.Dictionary;
import org.opencv.objdetect.Objdetect;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;

class RegisterMarksTest {

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  @Test
  void everyPrintedMarkIsTheTagOfThatNumberInOpenCvsOwnDictionary() {
    // Outside reference: OpenCV's DICT_APRILTAG_36h11.
    Dictionary dictionary = Objdetect.getPredefinedDictionary(Objdetect.DICT_APRILTAG_36h11);
    for (MarkFamily family : MarkFamily.values()) {
      for (RegisterMark mark : family.marks()) {
        try (Mats mats = new Mats()) {
          Mat drawn = mats.mat();
          dictionary.generateImageMarker(mark.tag(), RegisterMark.CELLS, drawn, 1);
          for (int row = 0; row < RegisterMark.CELLS; row++) {
            for (int column = 0; column < RegisterMark.CELLS; column++) {
              assertThat(mark.white(row, column)).isEqualTo(drawn.get(row, column)[0] > 127);
            }
          }
        }
      }
    }
  }
}
