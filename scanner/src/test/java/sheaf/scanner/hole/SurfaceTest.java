package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Slits are followed to a sheet's edge, and looked for beyond it. */
class SurfaceTest {

  private static final int FAR = 200;

  @Test
  void beyondTheSheetNothingHidesASlit() {
    try (DrawnSurface drawn = new DrawnSurface()) {
      for (int corner : new int[] {0, DrawnSurface.SIDE}) {
        Grid hiding = drawn.surface().printHidingSlits(Square.around(corner, corner, FAR + 2));

        for (int x = corner - FAR; x <= corner + FAR; x += 10) {
          for (int y = corner - FAR; y <= corner + FAR; y += 10) {
            assertThat(hiding.at(x, y)).isZero();
          }
        }
      }
    }
  }
}
