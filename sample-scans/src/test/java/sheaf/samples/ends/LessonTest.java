package sheaf.samples.ends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmPoint;
import sheaf.samples.scene.TearShot;
import sheaf.scanner.tear.EndNet;
import sheaf.scanner.tear.TearPicture;

/** However a square is turned and mirrored, what is wanted of the net lies on what it sees. */
class LessonTest {

  private static final int COLUMNS = 480;
  private static final int ROWS = 640;
  private static final MmPoint TAIL = new MmPoint(70.6, 91.4);

  /** A sheet that is plain but for a black dot where the tail passed. */
  private static LearnedSheet sheet() {
    byte[] tones = new byte[TearPicture.PLANES * COLUMNS * ROWS];
    Arrays.fill(tones, (byte) TearPicture.PAPER);
    int x = (int) ((TAIL.x() - 10) * TearPicture.PER_MM);
    int y = (int) ((TAIL.y() - 20) * TearPicture.PER_MM);
    for (int plane = 0; plane < TearPicture.PLANES; plane++) {
      tones[(plane * ROWS + y) * COLUMNS + x] = 0;
    }
    TearShot shot = new TearShot(1, new MmPoint(60, 91.4), TAIL, 3);
    return new LearnedSheet(new TearPicture(10, 20, COLUMNS, ROWS, tones), List.of(shot));
  }

  @Test
  void aTailIsWantedWhereItIsSeen() {
    SplittableRandom random = new SplittableRandom(5);
    int seen = 0;
    for (int i = 0; i < 60; i++) {
      Lesson lesson = Lesson.draw(sheet(), random);
      int black = darkest(lesson.picture());
      if (lesson.picture()[black] < -0.5) {
        seen++;
        int cell = cell(black);
        int plane = Lesson.CELLS * Lesson.CELLS;
        assertThat(lesson.wanted()[cell]).isEqualTo(1);
        double right =
            (cell % Lesson.CELLS + 0.5) * EndNet.CELL_MM + lesson.wanted()[3 * plane + cell];
        assertThat(right).isEqualTo((black % Lesson.SIDE + 0.5) / TearPicture.PER_MM, within(0.2));
      }
    }
    assertThat(seen).isGreaterThan(20);
  }

  private static int darkest(float[] picture) {
    int darkest = 0;
    for (int i = 0; i < Lesson.SIDE * Lesson.SIDE; i++) {
      darkest = picture[i] < picture[darkest] ? i : darkest;
    }
    return darkest;
  }

  private static int cell(int pixel) {
    int side = EndNet.CELL_MM * TearPicture.PER_MM;
    return pixel / Lesson.SIDE / side * Lesson.CELLS + pixel % Lesson.SIDE / side;
  }
}
