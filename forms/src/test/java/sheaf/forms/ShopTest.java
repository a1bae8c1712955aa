package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ShopTest {

  @Test
  void linesAreTidied() {
    Shop shop =
        new Shop(Optional.of("  Bow\tbench\n"), Optional.of("Mill\r\nLane 4"), Optional.empty());
    assertThat(shop.name()).contains("Bow bench");
    assertThat(shop.contact()).contains("Mill Lane 4");
  }

  @Test
  void charactersAreCountedAsPeopleCountThem() {
    String bows = "\uD83C\uDFF9".repeat(60);
    assertThat(Shop.line(bows, 60)).isEqualTo(bows);
    assertThatThrownBy(() -> Shop.line(bows + "a", 60)).hasMessage("must have 1 to 60 characters");
  }

  @Test
  void blankLineIsNone() {
    assertThatThrownBy(() -> Shop.line(" \t", 60)).hasMessage("must have 1 to 60 characters");
  }

  @Property
  void tidyingTwiceChangesNothing(@ForAll String text) {
    try {
      String once = Shop.line(text, 60);
      assertThat(Shop.line(once, 60)).isEqualTo(once);
    } catch (IllegalArgumentException e) {
      assertThat(e).hasMessage("must have 1 to 60 characters");
    }
  }

  @Test
  void logoKeepsItsBytesToItself() {
    byte[] file = {1, 2, 3};
    Logo logo = new Logo(Logo.Format.PNG, 300, 100, file);
    file[0] = 9;
    logo.file()[1] = 9;
    assertThat(logo.file()).containsExactly(1, 2, 3);
    assertThat(logo)
        .isEqualTo(new Logo(Logo.Format.PNG, 300, 100, new byte[] {1, 2, 3}))
        .hasSameHashCodeAs(new Logo(Logo.Format.PNG, 300, 100, new byte[] {1, 2, 3}))
        .isNotEqualTo(new Logo(Logo.Format.PNG, 300, 100, new byte[] {1, 2, 4}))
        .hasToString("PNG, 300 x 100 pixels");
  }

  @Test
  void logoHasPixels() {
    assertThatThrownBy(() -> new Logo(Logo.Format.JPEG, 0, 100, new byte[0]))
        .hasMessage("a picture has pixels: 0 x 100");
  }
}
